/** Square equations A·x = b in one array: row after row of A, each with its member of b behind it. */
export class Equations {
  readonly size: number;
  readonly width: number;
  readonly cells: Float64Array;

  constructor(size: number, cells?: Float64Array) {
    this.size = size;
    this.width = size + 1;
    this.cells = cells ?? new Float64Array(size * (size + 1));
  }

  copy(): Equations {
    return new Equations(this.size, this.cells.slice());
  }

  /** Adds to A, or with `column` = `size` to b. Where row or column is negative nothing is added: that is ground. */
  add(row: number, column: number, value: number): void {
    if (row < 0 || column < 0) return;
    const cell = row * this.width + column;
    this.cells[cell] = (this.cells[cell] ?? 0) + value;
  }
}

/** What is left of a diagonal member after elimination, as a share of it, that is nothing but rounding. */
const roundingShare = 1e-15;

/**
 * Solves by Gaussian elimination with partial pivoting; the equations are used up. Some forty unknowns: a library of
 * matrices would weigh more on the page than all of the simulator. Where rounding has swallowed what tied a group of
 * unknowns to ground (milliohms within it, tens of teraohms out of it), the last of the group is taken as zero: it floats.
 */
export function solveLinear({ size, width, cells }: Equations): Float64Array {
  const at = (row: number, column: number) => cells[row * width + column] as number;
  const diagonal = Array.from({ length: size }, (_, node) => Math.abs(at(node, node)));
  for (let column = 0; column < size; column += 1) {
    const pivot = pivotRow(at, column, size);
    if (pivot !== column) {
      const kept = cells.slice(pivot * width, (pivot + 1) * width);
      cells.copyWithin(pivot * width, column * width, (column + 1) * width);
      cells.set(kept, column * width);
    }
    if (Math.abs(at(column, column)) <= roundingShare * (diagonal[column] as number)) {
      cells.fill(0, column * width, (column + 1) * width);
      cells[column * width + column] = 1;
    }
    for (let row = column + 1; row < size; row += 1) {
      const factor = at(row, column) / at(column, column);
      if (factor === 0) continue;
      const [lower, upper] = [row * width, column * width];
      for (let k = column; k < width; k += 1) {
        cells[lower + k] = (cells[lower + k] as number) - factor * (cells[upper + k] as number);
      }
    }
  }
  const solution = new Float64Array(size);
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = at(row, size);
    for (let k = row + 1; k < size; k += 1) sum -= at(row, k) * (solution[k] as number);
    solution[row] = sum / at(row, row);
  }
  return solution;
}

function pivotRow(at: (row: number, column: number) => number, column: number, size: number): number {
  let pivot = column;
  for (let row = column + 1; row < size; row += 1) {
    if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
  }
  return pivot;
}
