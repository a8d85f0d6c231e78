export type Domain = readonly [from: number, to: number];

/** Whole decades around the values (all > 0), at least one: what a logarithmic axis spans. */
export function decadesAround(values: readonly number[]): Domain {
  const [least, most] = extent(values);
  const from = Math.floor(Math.log10(least) + 1e-9);
  return [10 ** from, 10 ** Math.max(from + 1, Math.ceil(Math.log10(most) - 1e-9))];
}

/** The least and the greatest value; a single value gets some room on both sides. */
export function spanOf(values: readonly number[]): Domain {
  const [least, most] = extent(values);
  if (least < most) return [least, most];
  const room = Math.abs(least) / 10 || 1;
  return [least - room, least + room];
}

// A loop, since Math.min(...values) fails for very many values.
function extent(values: readonly number[]): [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return [least, most];
}
