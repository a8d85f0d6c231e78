export interface TableData {
  /** Such as `The readings as a table`. */
  summary: string;
  head: string[];
  /** The first cell of each row names it. */
  rows: string[][];
  /** Shown below the table, such as how many rows were left out. */
  note?: string;
}

/** The numbers of a plot as text. */
export function PlotTable({ summary, head, rows, note }: TableData) {
  return (
    <details class="more">
      <summary>{summary}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard */}
      <section class="table-scroll" tabIndex={0} aria-label={summary}>
        <table>
          <thead>
            <tr>
              {head.map((text) => (
                <th key={text} scope="col">
                  {text}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((cells, index) => (
              <tr key={`${index} ${cells[0]}`}>
                <th scope="row">{cells[0]}</th>
                {cells.slice(1).map((text, column) => (
                  <td key={head[column + 1]}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {note && <p class="hint">{note}</p>}
    </details>
  );
}
