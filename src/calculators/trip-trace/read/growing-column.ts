/** A column of numbers that grows while a file is read. */
export class GrowingColumn {
  #values = new Float64Array(4096);
  length = 0;

  push(value: number): void {
    if (this.length === this.#values.length) {
      const wider = new Float64Array(this.#values.length * 2);
      wider.set(this.#values);
      this.#values = wider;
    }
    this.#values[this.length++] = value;
  }

  /** The values so far. */
  values(): Float64Array {
    return this.#values.subarray(0, this.length);
  }
}
