import type { BridgeDiodeInput } from '../../src/calculators/bridge-diode/rule/assess.ts';
import type { DiodeRail } from '../../src/calculators/bridge-diode/rule/rail.ts';
import { typed, typedPhases } from './typed.ts';

/** Three readings of the diode test, separated by bars: `0.41 | 412 mV | OL`. */
export function drops(text: string): DiodeRail['forward'] {
  const [U = '', V = '', W = ''] = text.split('|');
  return { U: typed(U, 'diode'), V: typed(V, 'diode'), W: typed(W, 'diode') };
}

const sound = '0.412 | 0.415 | 0.410';
const blocking = 'OL | OL | OL';

export interface DiodeRows {
  plusForward?: string;
  plusReverse?: string;
  minusForward?: string;
  minusReverse?: string;
  /** DC+ to U, V, W and DC− to U, V, W, in resistances. */
  resistance?: [string, string];
}

/** Defaults: discharged bus, leads off, steady readings, a sound stage. */
export function diodeInput(rows: DiodeRows = {}, other: Partial<BridgeDiodeInput> = {}): BridgeDiodeInput {
  return {
    busVoltage: typed('0.02 V', 'voltage'),
    motorLeads: 'off',
    steadiness: 'steady',
    plus: { forward: drops(rows.plusForward ?? sound), reverse: drops(rows.plusReverse ?? blocking) },
    minus: { forward: drops(rows.minusForward ?? sound), reverse: drops(rows.minusReverse ?? blocking) },
    ...(rows.resistance && {
      resistance: { dcPlus: typedPhases(rows.resistance[0]), dcMinus: typedPhases(rows.resistance[1]) },
    }),
    ...other,
  };
}
