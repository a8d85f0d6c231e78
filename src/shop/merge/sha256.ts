/** The first 32 bits of the fractional parts of the square or cube roots of the first primes (FIPS 180-4, 4.2.2, 5.3.3). */
function fractions(count: number, root: (prime: number) => number): number[] {
  const primes: number[] = [];
  for (let number = 2; primes.length < count; number += 1) {
    if (primes.every((prime) => number % prime !== 0)) primes.push(number);
  }
  return primes.map((prime) => ((root(prime) % 1) * 2 ** 32) | 0);
}

const starts = fractions(8, Math.sqrt);
const rounds = fractions(64, Math.cbrt);

const turn = (word: number, by: number) => (word >>> by) | (word << (32 - by));

/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits (FIPS 180-4). Not `crypto.subtle`, which browsers do not offer to
 * pages served by plain http, such as from a laptop to a tablet on the shop's network.
 */
export function sha256(text: string): string {
  const bytes = new TextEncoder().encode(text);
  const padded = new Uint8Array(((bytes.length + 8) >> 6) * 64 + 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(padded.length - 4, (bytes.length << 3) >>> 0);
  const state = Int32Array.from(starts);
  const words = new Int32Array(64);
  for (let block = 0; block < padded.length; block += 64) {
    for (let at = 0; at < 16; at += 1) words[at] = view.getInt32(block + 4 * at);
    mixBlock(state, words);
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

function mixBlock(state: Int32Array, words: Int32Array): void {
  const word = (at: number) => words[at] as number;
  for (let at = 16; at < 64; at += 1) {
    const [early, late] = [word(at - 15), word(at - 2)];
    const s0 = turn(early, 7) ^ turn(early, 18) ^ (early >>> 3);
    const s1 = turn(late, 17) ^ turn(late, 19) ^ (late >>> 10);
    words[at] = word(at - 16) + s0 + word(at - 7) + s1;
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [number, number, number, number, number, number, number, number];
  for (let at = 0; at < 64; at += 1) {
    const s1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const first = (h + s1 + ((e & f) ^ (~e & g)) + (rounds[at] as number) + word(at)) | 0;
    const s0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
    const second = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  for (const [at, value] of [a, b, c, d, e, f, g, h].entries()) state[at] = (state[at] as number) + value;
}
