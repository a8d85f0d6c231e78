/** Random numbers that a seed repeats: a linear congruential generator (Numerical Recipes' constants, recalled from memory). */
export class Dice {
  private state: number;

  constructor(seed: number) {
    this.state = (seed * 2654435761) >>> 0;
  }

  /** From 0 to below 1. */
  next(): number {
    this.state = (Math.imul(this.state, 1664525) + 1013904223) >>> 0;
    return this.state / 2 ** 32;
  }

  /** Whether something of this chance happens. */
  falls(chance: number): boolean {
    return this.next() < chance;
  }

  of<T>(all: readonly T[]): T | undefined {
    return all[Math.floor(this.next() * all.length)];
  }
}
