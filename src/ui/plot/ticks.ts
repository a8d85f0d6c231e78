/**
 * Round places for ticks on a linear axis, within `from` and `to` (from < to): steps of 1, 2 or 5 times a power of
 * ten, at most `most` of them.
 */
export function linearTicks(from: number, to: number, most = 6): number[] {
  const step = roundStep((to - from) / most);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  // Multiplied, then rounded: adding up steps of 0.1 would show 0.30000000000000004.
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => trimmed((first + i) * step));
}

/** The smallest of 1, 2, 5 times a power of ten that is at least `least` (> 0). */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const size = least / power;
  return power * (size <= 1 ? 1 : size <= 2 ? 2 : size <= 5 ? 5 : 10);
}

/**
 * Places for ticks on a logarithmic axis (0 < from < to): each decade; every second or third if there would be more
 * than `most`; 1, 2 and 5 of each if there would be fewer than three.
 */
export function logTicks(from: number, to: number, most = 7): number[] {
  const first = Math.ceil(Math.log10(from) - 1e-9);
  const last = Math.floor(Math.log10(to) + 1e-9);
  const decades = last - first + 1;
  if (decades < 3) return withinDecades(from, to);
  const stride = Math.ceil(decades / most);
  return Array.from({ length: Math.ceil(decades / stride) }, (_, i) => trimmed(10 ** (first + i * stride)));
}

function withinDecades(from: number, to: number): number[] {
  const first = Math.floor(Math.log10(from));
  const decades = Array.from({ length: Math.ceil(Math.log10(to)) - first + 1 }, (_, i) => first + i);
  const places = decades.flatMap((decade) => [1, 2, 5].map((digit) => trimmed(digit * 10 ** decade)));
  return places.filter((place) => place >= from * (1 - 1e-9) && place <= to * (1 + 1e-9));
}

function trimmed(value: number): number {
  return Number(value.toPrecision(12));
}
