/** A seeded source of chance: the same seed gives the same sets on any machine (mulberry32, public domain). */
export class Dice {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  /** From 0 to below 1. */
  roll(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  chance(probability: number): boolean {
    return this.roll() < probability;
  }

  below(count: number): number {
    return Math.floor(this.roll() * count);
  }

  pick<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.roll();
  }

  /** Orders of magnitude alike. */
  log(low: number, high: number): number {
    return 10 ** this.between(Math.log10(low), Math.log10(high));
  }
}
