import { type Bent, damagedAt } from './model.ts';

const [left, metre] = [20, 120];
const runs = { lower: 168, upper: 72 };
const radius = (runs.lower - runs.upper) / 2;

/** The cable in its chain: fixed on the lower left, around the bend, back to the moving end. The cross is the damage. */
export function CableDrawing({ result: { bendAt, overDamage } }: { result: Bent }) {
  const bendX = left + 16 + bendAt * metre;
  const damage = damagePlace(bendX);
  return (
    <>
      <path
        class="line heavy"
        d={`M${left} ${runs.lower}H${bendX.toFixed(1)}a${radius} ${radius} 0 0 0 0 ${-2 * radius}H${left}`}
      />
      <rect class="line paper" x={left - 14} y={runs.lower - 14} width="28" height="28" />
      <text x={left - 14} y={runs.lower + 38}>
        fixed end
      </text>
      <rect class="line paper" x={left - 14} y={runs.upper - 14} width="28" height="28" />
      <text x={left - 14} y={runs.upper - 26}>
        moving end
      </text>
      <path
        class={overDamage ? 'line marked' : 'line'}
        d={`M${damage.x - 10} ${damage.y - 10}l20 20M${damage.x + 10} ${damage.y - 10}l-20 20`}
      />
      <text
        class={overDamage ? 'strong halo' : 'halo'}
        x={Math.max(150, damage.x - 16)}
        y={damage.y + (damage.y > 150 ? -18 : 30)}
        text-anchor="end"
      >
        {overDamage ? 'bent here: it shows' : 'damaged here: hidden'}
      </text>
    </>
  );
}

/** On the lower run before the bend, in the bend, or behind it on the upper run. */
function damagePlace(bendX: number): { x: number; y: number } {
  const along = left + 16 + damagedAt * metre;
  const past = along - bendX;
  const half = 0.3 * metre;
  if (past < -half) return { x: Math.round(along), y: runs.lower };
  if (past > half) return { x: Math.round(bendX - past + half), y: runs.upper };
  const angle = (past / half) * (Math.PI / 2);
  return {
    x: Math.round(bendX + radius * Math.cos(angle)),
    y: Math.round((runs.lower + runs.upper) / 2 - radius * Math.sin(angle)),
  };
}
