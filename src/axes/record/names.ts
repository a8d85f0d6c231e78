/** How an axis is called: by machine and axis, as typed. */
export interface AxisNames {
  machine: string;
  axis: string;
}

/**
 * Two spellings with the same key are the same name: letter case, width of characters and spaces do not count. Hyphens
 * and points do, since `1-2` and `12` are two axes.
 */
export function nameKey({ machine, axis }: AxisNames): string {
  return `${plain(machine)}\n${plain(axis)}`;
}

const known = new Map<string, string>();

/** Remembered: thousands of visits name few machines. */
function plain(text: string): string {
  const before = known.get(text);
  if (before !== undefined) return before;
  const made = normalized(text);
  known.set(text, made);
  return made;
}

function normalized(text: string): string {
  return text.normalize('NFKC').trim().replaceAll(/\s+/g, ' ').toLowerCase();
}

/** Whether anything names the axis at all. */
export function isNamed({ machine, axis }: AxisNames): boolean {
  return machine.trim() !== '' || axis.trim() !== '';
}

/**
 * The id of an axis from its first name: two tablets that note the same axis before they know of each other make the
 * same id, so that their records merge by themselves. 32 hexadecimal digits.
 */
export function idOfNames(names: AxisNames): string {
  const key = nameKey(names);
  return [0x9e3779b9, 0x85ebca6b, 0xc2b2ae35, 0x27d4eb2f].map((seed) => hex(mixed(key, seed))).join('');
}

/** A 32-bit hash of the text (multiply and rotate, as in public-domain hash functions). */
function mixed(text: string, seed: number): number {
  let hash = seed;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0xcc9e2d51);
    hash = (hash << 13) | (hash >>> 19);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

const hex = (number: number) => number.toString(16).padStart(8, '0');
