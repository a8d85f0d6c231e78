/** Equations A·x = b in one array: row after row of A, each followed by its element of b. A is square. */
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

  /** Adds to A, or to b if `column` is `size`. A negative row or column means ground, and adds nothing. */
  add(row: number, column: number, value: number): void {
    if (row < 0 || column < 0) return;
    const cell = row * this.width + column;
    this.cells[cell] = (this.cells[cell] ?? 0) + value;
  }
}

/** After elimination, a diagonal element below this share of its first value is only rounding. */
const roundingShare = 1e-15;

/**
 * Solves by Gaussian elimination with partial pivoting, and overwrites the equations. For some forty unknowns a matrix
 * library would be larger than the whole simulator. If rounding has swallowed the connection of a group of unknowns to
 * ground (milliohms within the group, tens of teraohms to ground), the group floats: its last unknown is set to zero.
 */
export function solveLinear({ size, width, cells }: Equations): Float64Array {
  const at = (row: number, column: number) => cells[row * width + column] as number;
  const diagonal = Array.from({ length: size }, (_, node) => Math.abs(at(node, node)));
  const columns = new Int32Array(width);
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
    // Most nodes touch few others: only what is not zero in this row changes the rows below.
    let filled = 0;
    for (let k = column; k < width; k += 1) if (at(column, k) !== 0) columns[filled++] = k;
    const upper = column * width;
    for (let row = column + 1; row < size; row += 1) {
      const lower = row * width;
      if (cells[lower + column] === 0) continue;
      const factor = at(row, column) / at(column, column);
      for (let place = 0; place < filled; place += 1) {
        const k = columns[place] as number;
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
