import type { SimulatedFigure } from './simulated-figure.ts';

interface Props<Result> {
  figure: SimulatedFigure<Result>;
  id: string;
  /** A class beside that of the box: whether the table is in sight. */
  look: string;
}

/** The values at some settings. Of the controls only those that change between the rows have a column. */
export function FigureTable<Result>({ figure, id, look }: Props<Result>) {
  const { controls, rows, compute, values } = figure;
  const changing = controls.flatMap((control, place) =>
    rows.some((row) => row[place] !== rows[0]?.[place]) ? [{ control, place }] : [],
  );
  const computed = rows.map((row) => ({ row, shown: values(compute(row)) }));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard
    <section id={id} class={`figure-table table-scroll ${look}`} tabIndex={0} aria-label="Table of values">
      <table>
        <thead>
          <tr>
            {changing.map(({ control }) => (
              <th key={control.id} scope="col">
                {control.label}
              </th>
            ))}
            {computed[0]?.shown.map(([name]) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {computed.map(({ row, shown }) => (
            <tr key={row.join()}>
              {changing.map(({ control, place }) => (
                <th key={control.id} scope="row">
                  {control.stops[row[place] ?? 0]}
                </th>
              ))}
              {shown.map(([name, text]) => (
                <td key={name}>{text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
