import { assessBridge, type BridgeInput } from '../../calculators/bridge/rule/assess.ts';
import type { RailFinding } from '../../calculators/bridge/rule/rail-findings.ts';
import { worstPosition } from '../../calculators/bridge/rule/second-readings.ts';
import { partsOfPosition, type Rail } from '../../calculators/bridge/rule/switch-position.ts';
import type { Finding } from '../../kernel/assessment/assessment.ts';
import { type Phase, type Phases, phases } from '../../kernel/electrics/phases.ts';
import { limitValue } from '../../kernel/limits.ts';
import { type Instrument, intervalOf } from '../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import { typedBack } from './measure-rows.ts';
import { accuracy, type Measuring, onceEach } from './measuring.ts';

type Rows = Record<Rail, Phases<Reading>>;

/** Red on DC+ and black on the terminal, or red on the terminal and black on DC−; `exchanged`: the other way round. */
function readAt(machine: Machine, rail: Rail, phase: Phase, exchanged = false): Reading {
  const [red, black] = rail === 'plus' ? ['DC+', `drive.${phase}`] : [`drive.${phase}`, 'DC-'];
  const leads: [string, string] = exchanged ? [black as string, red as string] : [red as string, black as string];
  return typedBack(machine.measure('ohms', ...leads));
}

function rowOf(machine: Machine, rail: Rail, exchanged = false): Phases<Reading> {
  const one = (phase: Phase) => readAt(machine, rail, phase, exchanged);
  return { U: one('U'), V: one('V'), W: one('W') };
}

/** The six readings, each rail's first terminal again, and whatever the verdict asks for after that. */
export function measureBridge(machine: Machine, busVoltage: Reading): Measuring<ReturnType<typeof assessBridge>> {
  machine.change((state) => ({ ...state, brakingResistor: false, dcLink: false }));
  const instrument = accuracy(machine.instruments.ohms);
  const turned: Record<Rail, boolean> = { plus: false, minus: false };
  let rows: Rows = { plus: rowOf(machine, 'plus'), minus: rowOf(machine, 'minus') };
  let more: Partial<BridgeInput> = {};
  const firstAgain = () => {
    const plusAgain = readAt(machine, 'plus', 'U', turned.plus);
    more = { ...more, plusAgain, minusAgain: readAt(machine, 'minus', 'U', turned.minus) };
  };
  const again = () => {
    rows = { plus: rowOf(machine, 'plus', turned.plus), minus: rowOf(machine, 'minus', turned.minus) };
    firstAgain();
  };
  const assess = () =>
    assessBridge({
      ...{ busVoltage, motorLeads: 'off', alsoOnBus: 'nothing', ...more },
      ...{ dcPlus: rows.plus, dcMinus: rows.minus, instrument },
    });
  const worstAgain = () => {
    const at = worstOf(assess().findings, rows, instrument);
    if (at !== undefined) more = { ...more, worstAgain: readAt(machine, at.rail, at.phase, turned[at.rail]) };
    more = { ...more, dcBus: typedBack(machine.measure('ohms', 'DC+', 'DC-')) };
  };
  const thirdTime = () => {
    again();
    worstAgain();
  };
  const exchange = () => {
    const plusExchanged = readAt(machine, 'plus', 'U', !turned.plus);
    more = { ...more, plusExchanged, minusExchanged: readAt(machine, 'minus', 'U', !turned.minus) };
  };
  const typeExchanged = () => {
    for (const one of assess().findings) if (one.code === 'rail-read-forward') turned[one.rail] = !turned[one.rail];
    again();
    exchange();
  };
  firstAgain();
  return {
    assess,
    improve: onceEach({
      ...{ 'read-first-again': again, 'read-row-again': again, 'repeat-more-exactly': again, 'repeat-short': again },
      ...{ 'exchange-leads': exchange, 'type-exchanged-row': typeExchanged },
      ...{ 'read-odd-again': worstAgain, 'read-third-time': thirdTime, 'read-bus-again': worstAgain },
      'compare-known-good': () => {
        if (machine.knowsSound) more = { ...more, sister: isAlike(rows, machine.sound()) ? 'alike' : 'differs' };
      },
    }),
  };
}

/** The position that is read once more: the lowest short, else the lowest odd reading. */
function worstOf(findings: readonly Finding[], { plus, minus }: Rows, instrument: Instrument) {
  const row = (readings: Phases<Reading>) => ({ readings, again: missing, exchanged: missing });
  const rows = { plus: row(plus), minus: row(minus) };
  const worst = worstPosition(findings as readonly RailFinding[], { rows, instrument });
  return worst && partsOfPosition[worst];
}

/** Whether a sound drive of the same model shows these six readings within the tolerance. */
function isAlike(rows: Rows, sound: Machine): boolean {
  const tolerance = limitValue('bridge-tolerance') / 100;
  return (['plus', 'minus'] as const).every((rail) => {
    const own = rowOf(sound, rail);
    return phases.every((phase) => {
      const [one, other] = [intervalOf(rows[rail][phase]), intervalOf(own[phase])];
      return one.lo <= other.hi * (1 + tolerance) && other.lo <= one.hi * (1 + tolerance);
    });
  });
}
