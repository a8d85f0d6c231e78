import type { ComponentChildren } from 'preact';
import { Axes } from './Axes.tsx';
import type { Frame } from './frame.ts';
import { PlotTable, type TableData } from './PlotTable.tsx';

/**
 * A plot: axes, what is drawn between them, a caption, and the same numbers as a text table. How to use it:
 *
 *   const frame = plotFrame(
 *     { kind: 'linear', domain: [0, 10], label: 'time, min', format: String },
 *     { kind: 'log10', domain: decadesAround(ohms), label: 'reading', format: (v) => formatQuantity(v, 'Ω') },
 *   );
 *   <Plot id="absorption" title="…" desc="…" frame={frame} caption="…" table={{ summary, head, rows }}>
 *     <Band frame={frame} upper={pairs} lower={pairs} />
 *     <LimitLine frame={frame} at={limit} text="go from 1 MΩ" />
 *     <Curve frame={frame} points={pairs} look="dashed" />
 *     <Points frame={frame} points={[{ x, y, shape: 'dot', text: 'U' }]} />
 *   </Plot>
 *
 * On the server: write the whole plot as one `.tsx` component and put that into an Astro page or figure without a
 * `client:` directive. The parts take their frame as a property, since a slot of an Astro file can't pass context.
 * `desc` is what a reader who cannot see the drawing needs from it; the table holds the numbers.
 */
interface Props {
  /** Unique on the page. */
  id: string;
  title: string;
  desc: string;
  frame: Frame;
  caption?: ComponentChildren;
  table: TableData;
  children: ComponentChildren;
}

export function Plot({ id, title, desc, frame, caption, table, children }: Props) {
  return (
    <figure class="plot">
      <svg viewBox={`0 0 360 ${frame.box.bottom + 52}`} role="img" aria-labelledby={`${id}-title ${id}-desc`}>
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-desc`}>{desc}</desc>
        <Axes frame={frame} />
        {children}
      </svg>
      {caption && <figcaption>{caption}</figcaption>}
      <PlotTable {...table} />
    </figure>
  );
}
