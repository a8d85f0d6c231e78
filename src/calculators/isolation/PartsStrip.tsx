import { partStatusNames } from './part-names.ts';
import type { IsolationAssessment, PartStatus } from './rule/input.ts';
import { type Core, cores } from './suspect-cores.ts';

type Parts = IsolationAssessment['parts'];

const rows: { part: keyof Parts; name: string }[] = [
  { part: 'cable', name: 'Cable' },
  { part: 'motor', name: 'Motor' },
  { part: 'protectiveConductor', name: 'Protective conductor' },
];

/** A sign for each status, drawn in a frame of 32 by 32, distinct without colour. */
const signs: Record<PartStatus, string> = {
  'proven-good': 'M7 17l6 7 12-15',
  'proven-bad': 'M8 8l16 16M24 8 8 24',
  suspect: 'M16 6v13M16 24v2',
  'not-suspect': 'M7 17l6 7 12-15',
  undecided: 'M11 12a5 5 0 1 1 7 5q-2 1-2 3M16 25v1',
  'not-tested': 'M9 16h14',
};

const rowHeight = 52;

interface Props {
  parts: Parts;
  /** The cores that fail with the cable alone. */
  badCores: readonly Core[];
  /** The stages contradict each other. */
  misfit: boolean;
}

/** The proven status of each part, drawn. */
export function PartsStrip({ parts, badCores, misfit }: Props) {
  const height = rows.length * rowHeight;
  return (
    <figure class="live-figure">
      <svg
        class="live-drawing"
        viewBox={`0 0 360 ${height}`}
        role="img"
        aria-labelledby="isolation-parts-title isolation-parts-text"
      >
        <title id="isolation-parts-title">What is proven of each part</title>
        <desc id="isolation-parts-text">
          {rows.map(({ part, name }) => `${name}: ${partStatusNames[parts[part]]}.`).join(' ')}
          {badCores.length > 0 && ` Cores that fail: ${badCores.join(', ')}.`}
        </desc>
        {rows.map(({ part, name }, index) => (
          <g key={part} data-part={part} data-status={parts[part]} transform={`translate(0 ${index * rowHeight})`}>
            <rect class="frame" x="2" y="4" width="356" height={rowHeight - 8} rx="3" />
            <rect class="switch" x="10" y="10" width="32" height="32" rx="3" />
            <path class="sign" d={signs[parts[part]]} transform="translate(10 10)" />
            <text x="54" y="32" class="strong">
              {name}
            </text>
            {part === 'cable' && badCores.length > 0 && <CoreTags bad={badCores} />}
            <text x="348" y="32" text-anchor="end">
              {partStatusNames[parts[part]]}
            </text>
          </g>
        ))}
      </svg>
      {misfit && (
        <figcaption class="misfit">The readings do not fit together. Measure again before you act on this.</figcaption>
      )}
    </figure>
  );
}

/** The four cores of the cable, those that fail crossed. */
function CoreTags({ bad }: { bad: readonly Core[] }) {
  return (
    <>
      {cores.map((core, index) => (
        <g
          key={core}
          data-core={core}
          data-state={bad.includes(core) ? 'suspect' : undefined}
          transform={`translate(${112 + index * 34} 13)`}
        >
          <rect class="switch" x="0" y="0" width="28" height="26" rx="3" />
          <text x="14" y="18" text-anchor="middle">
            {core}
          </text>
          {bad.includes(core) && <path class="wire" d="M2 24 26 2" />}
        </g>
      ))}
    </>
  );
}
