import { assessInputCircuit } from '../../src/calculators/input-circuit/rule/assess.ts';
import type { InputCircuitInput, Line, Lines } from '../../src/calculators/input-circuit/rule/input.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { busIsDead, figure, further, hair, instrument, least, lowered, raised, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const conducting = ['plusConducting', 'minusConducting'] as const;
const blocking = ['plusBlocking', 'minusBlocking'] as const;

const three = (make: () => Reading): Lines<Reading> => ({ L1: make(), L2: make(), L3: make() });
const open = (dice: Dice): Reading =>
  dice.chance(0.97) ? { kind: 'over', unit: 'V' } : reading(dice, () => dice.pick([0.002, 0.3, 1.4, 1.5, 2.1]), 'V');
/** Mostly alike, as the diodes of one part are. */
const drops = (dice: Dice): Lines<Reading> => {
  const usual = dice.pick([0.45, 0.5, 0.62]);
  return three(() =>
    dice.chance(0.02)
      ? { kind: 'over', unit: 'V' }
      : reading(dice, () => (dice.chance(0.95) ? usual : dice.pick([0.002, 0.5, 0.9])), 'V', 0.005),
  );
};

function make(dice: Dice): InputCircuitInput {
  const plate = dice.pick([22, 47, 100]);
  const fuse = () => reading(dice, () => dice.pick([0.2, 0.2, 0.3, 0.3, 0.3, 0.5, 0.5, 0.5, 3]), 'Ω', 0.005);
  return {
    busVoltage: reading(dice, () => dice.pick([0, 0.02, 0.02, 0.1, 0.11, 49, 300]), 'V'),
    supplyLeads: dice.chance(0.95) ? 'off' : dice.pick(['connected', 'not-stated'] as const),
    others: dice.chance(0.9) ? 'off' : dice.pick(['connected', 'not-stated'] as const),
    lines: dice.chance(0.7) ? 'three' : 'two',
    fuses: three(fuse),
    plusConducting: drops(dice),
    plusBlocking: three(() => open(dice)),
    minusConducting: drops(dice),
    minusBlocking: three(() => open(dice)),
    linkConducting: reading(dice, () => dice.pick([0.8, 0.9, 1.1, 1.49, 1.6]), 'V'),
    linkBlocking: open(dice),
    climb: dice.chance(0.9) ? 'climbs' : dice.pick(['at-once', 'not-stated'] as const),
    precharge: dice.chance(0.85) ? 'reached' : dice.pick(['none', 'inside', 'not-stated'] as const),
    prechargePlate: reading(dice, () => plate, 'Ω'),
    prechargeOhms: reading(dice, () => plate * dice.pick([0.01, 0.8, 0.93, 1, 1, 1, 1.2, 3]), 'Ω'),
    again: dice.chance(0.5),
    ...(dice.chance(0.2) && { instrument: instrument(dice, [2e7]) }),
  };
}

const used = ({ lines }: InputCircuitInput): Line[] => (lines === 'two' ? ['L1', 'L2'] : ['L1', 'L2', 'L3']);

/** Limits typed once more on purpose. OL without a range is above any drop. */
function mayGo(input: InputCircuitInput): boolean {
  const { instrument: by, precharge, prechargePlate, prechargeOhms } = input;
  if (!busIsDead(input.busVoltage) || input.supplyLeads !== 'off' || input.others !== 'off') return false;
  if (input.climb !== 'climbs') return false;
  if (!used(input).every((line) => (span(input.fuses[line], by)?.hi ?? 9) <= 2)) return false;
  const meter: Instrument = {
    ...(by?.percent !== undefined && { percent: by.percent }),
    ...(by?.counts !== undefined && { counts: by.counts }),
  };
  const conducts = (one: Reading) => {
    const at = span(one, meter);
    return at !== undefined && at.lo > 0.1 / hair && at.hi < 1.5 * hair;
  };
  const blocks = (one: Reading) => (one.kind === 'over' && one.atLeast === undefined) || least(one, meter) >= 1.5;
  const diodes = used(input).every(
    (line) =>
      conducting.every((row) => conducts(input[row][line])) && blocking.every((row) => blocks(input[row][line])),
  );
  const alike = conducting.every((row) => {
    const volts = used(input).map((line) => figure(input[row][line]));
    return Math.max(...volts) - Math.min(...volts) <= 0.05 * hair;
  });
  if (!alike) return false;
  if (!diodes || !conducts(input.linkConducting) || !blocks(input.linkBlocking)) return false;
  const at = span(prechargeOhms, by);
  const plate = figure(prechargePlate);
  return precharge === 'reached' && !!at && at.lo >= (plate * 0.9) / hair && at.hi <= plate * 1.1 * hair;
}

export const inputCircuit: Subject<InputCircuitInput> = {
  name: 'input circuit',
  make,
  signed: ['busVoltage', ...conducting, ...blocking, 'linkConducting', 'linkBlocking'],
  verdict: (input) => assessInputCircuit(input).verdict,
  mayGo,
  lacking: (input, dice) => {
    const line = dice.pick(used(input));
    if (dice.chance(0.1)) return having(input, 'precharge', dice.pick(['none', 'inside'] as const));
    const what = dice.pick(['stated', 'row', 'link'] as const);
    if (what === 'row') {
      const row = dice.pick(['fuses', ...conducting, ...blocking] as const);
      return having(input, row, { ...input[row], [line]: missing });
    }
    if (what === 'link')
      return having(input, dice.pick(['busVoltage', 'linkConducting', 'linkBlocking'] as const), missing);
    return having(input, dice.pick(['supplyLeads', 'others', 'climb', 'precharge'] as const), 'not-stated');
  },
  worse: (input, dice) => {
    // A reading below zero stops everything, and what stops is undecided.
    const rows = [...conducting, ...blocking].flatMap((row) => used(input).map((line) => input[row][line]));
    const below = [...rows, input.linkConducting, input.linkBlocking].some((one) => figure(one) < 0);
    if (below || input.instrument?.upperLimit !== undefined) return undefined;
    const factor = dice.pick([1.01, 1.3, 2, 100, 1e6]);
    if (dice.chance(0.1)) return having(input, 'climb', 'at-once');
    if (dice.chance(0.2)) {
      const at = dice.pick(used(input));
      return having(input, 'fuses', { ...input.fuses, [at]: raised(input.fuses[at], factor) });
    }
    if (dice.chance(0.2))
      return having(input, 'prechargeOhms', further(input.prechargeOhms, figure(input.prechargePlate), factor));
    if (dice.chance(0.3)) return having(input, 'linkBlocking', lowered(input.linkBlocking, factor));
    const [row, line] = [dice.pick(blocking), dice.pick(used(input))];
    // One that conducts only where it should block contradicts itself: its leads were exchanged.
    if (input[row === 'plusBlocking' ? 'plusConducting' : 'minusConducting'][line].kind !== 'value') return undefined;
    return having(input, row, { ...input[row], [line]: lowered(input[row][line], factor) });
  },
};
