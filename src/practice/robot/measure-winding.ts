import { assessWinding, type WindingInput } from '../../calculators/winding/rule/assess.ts';
import { phases } from '../../kernel/electrics/phases.ts';
import { intervalOf } from '../../kernel/reading/interval.ts';
import type { Machine } from '../case/machine.ts';
import { typedBack, windingRow } from './measure-rows.ts';
import { accuracy, type Measuring, onceEach } from './measuring.ts';

export function measureWinding(
  machine: Machine,
  at: 'cable.drive' | 'motor',
): Measuring<ReturnType<typeof assessWinding>> {
  let mode: 'ohms' | 'milliohms' = 'ohms';
  let readings = windingRow(machine, at, mode);
  let more: Pick<WindingInput, 'again' | 'acrossJoint'> = {};
  const withFourLeads = () => {
    mode = 'milliohms';
    readings = windingRow(machine, at, mode);
    more = {};
  };
  const again = () => {
    // Two sets count only with the same instrument, and four leads leave the tips out.
    if (mode === 'ohms') withFourLeads();
    more = { ...more, again: windingRow(machine, at, mode) };
  };
  /** Before the connector is opened: two leads would add their own contacts. */
  const acrossJoint = () => {
    again();
    more = { ...more, acrossJoint: worstJoint(machine) };
  };
  return {
    assess: () =>
      assessWinding({
        ...{ readings, ...more, instrument: accuracy(machine.instruments[mode]) },
        leads: mode === 'milliohms' ? 'four' : 'zeroed',
      }),
    improve: onceEach({
      ...{ 'use-milliohm-meter': withFourLeads, 'use-four-leads': withFourLeads, 'read-pairs-again': again },
      ...(at === 'cable.drive' && { 'measure-at-motor': acrossJoint }),
    }),
  };
}

/** The mated pin with the most resistance. */
function worstJoint(machine: Machine) {
  const all = phases.map((phase) => typedBack(machine.measure('milliohms', `cable.motor.${phase}`, `motor.${phase}`)));
  return all.reduce((worst, one) => (intervalOf(one).hi > intervalOf(worst).hi ? one : worst));
}
