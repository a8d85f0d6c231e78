interface Props {
  /** What the terminals belong to: "Drive". */
  at: string;
  /** The instrument's display: "Ω". */
  meter: string;
  /** All terminals, from left to right. */
  terminals: readonly string[];
  /** Where each lead goes: the first at once, the others after it. */
  red: readonly string[];
  black: readonly string[];
  /** Joined to each other, outside the instrument. */
  joined?: readonly string[];
}

const left = 93;
const right = 297;
const box = { width: 47, height: 22 };
const runs = { near: 48, far: 70 };

/**
 * Which lead goes where, beside the row that it serves. Hidden from screen readers: the words of the row say the same.
 */
export function LeadPicture({ at, meter, terminals, red, black, joined = [] }: Props) {
  const x = (terminal: string) => left + (terminals.indexOf(terminal) * (right - left)) / (terminals.length - 1);
  const farthest = (lead: readonly string[]) => Math.max(...lead.map(x));
  // The lead that ends first runs above the other, so that the two cross as little as possible.
  const redIsNear = farthest(red) <= farthest(black);
  const bar = joined.map(x);
  return (
    <svg class="lead-picture" viewBox="0 0 322 80" aria-hidden="true" focusable="false">
      <text x="2" y="15">
        {at}
      </text>
      {bar.length > 1 && <path class="joined" d={`M${Math.min(...bar)} 2H${Math.max(...bar)}`} />}
      <Lead of="black" to={black.map(x)} y={redIsNear ? runs.far : runs.near} />
      <Lead of="red" to={red.map(x)} y={redIsNear ? runs.near : runs.far} />
      {terminals.map((terminal) => (
        <g key={terminal}>
          {joined.includes(terminal) && <path class="joined" d={`M${x(terminal)} 2V6`} />}
          <rect class="terminal" x={x(terminal) - box.width / 2} y="6" width={box.width} height={box.height} rx="3" />
          <text x={x(terminal)} y="22" text-anchor="middle" class="strong">
            {terminal}
          </text>
        </g>
      ))}
      <rect class="terminal" x="2" y="34" width="42" height="44" rx="5" />
      <text x="23" y="61" text-anchor="middle" class="strong">
        {meter}
      </text>
    </svg>
  );
}

/** Solid to the first terminal, dashed to those that follow it. */
function Lead({ of, to, y }: { of: 'red' | 'black'; to: readonly number[]; y: number }) {
  const [first = left, ...next] = to;
  const top = 6 + box.height;
  return (
    <g class={`lead ${of}`}>
      <path d={`M44 ${y}H${first}V${top}`} />
      {next.map((x) => (
        <path key={x} class="later" d={`M${first} ${y}H${x}V${top}`} />
      ))}
      <text x="50" y={y - 4}>
        {of}
      </text>
    </g>
  );
}
