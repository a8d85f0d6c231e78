import { assessWinding, type WindingInput } from '../../src/calculators/winding/rule/assess.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { figure, hair, instrument, reading, type Span, span } from './readings.ts';
import { having, type Subject } from './subject.ts';

const missing: Reading = { kind: 'missing' };
const pairs = ['UV', 'VW', 'WU'] as const;

/** Largest deviation from the mean in percent, at the worst corner of three intervals minus the leads. */
function worstDeviation(spans: readonly Span[], leads: number): number {
  let worst = 0;
  for (let corner = 0; corner < 8; corner++) {
    const values = spans.map(({ lo, hi }, index) => Math.max(0, ((corner >> index) & 1 ? hi : lo) - leads));
    const mean = values.reduce((sum, value) => sum + value, 0) / 3;
    const deviation = Math.max(...values.map((value) => Math.abs(value - mean))) / mean;
    if (!(deviation * 100 <= worst)) worst = deviation * 100;
  }
  return worst;
}

/** The three spans of a set whose values can pass: none open, none unbounded. */
function spansOf(readings: WindingInput['readings'], meter: Instrument): Span[] | undefined {
  const spans = pairs.map((pair) => (readings[pair].kind === 'value' ? span(readings[pair], meter) : undefined));
  const bad = spans.some((one) => one === undefined || !(one.lo <= 10e3) || one.hi === Number.POSITIVE_INFINITY);
  return bad ? undefined : (spans as Span[]);
}

/** Two hand-held tips may have added 0.05 Ω to a reading or to the zero. Typed once more on purpose. */
const held = ({ lo, hi }: Span, leads: WindingInput['leads']) =>
  leads === 'four' ? { lo, hi } : { lo: Math.max(0, lo - 0.05), hi: hi + 0.05 };

/** A connector of more than 0.05 Ω for certain, or none that conducts. */
function jointIsBad({ acrossJoint = missing, leads }: WindingInput, meter: Instrument): boolean {
  if (acrossJoint.kind === 'over' && acrossJoint.atLeast === undefined) return true;
  const one = span(acrossJoint, meter);
  return leads === 'four' && one !== undefined && one.lo > 0.05 * hair;
}

/** R2 = R1 (k + t2)/(k + t1), k 234.5, 235 or 225; within 10 % of the nameplate. Typed once more on purpose. */
function fitsNameplate(
  { reference = missing, referenceTemperature = missing, temperature = missing, conductor }: WindingInput,
  mean: number,
) {
  if (reference.kind === 'missing') return true;
  const [from, to] = [figure(temperature), figure(referenceTemperature)];
  if (!(from >= -20 && from <= 180 && to >= -20 && to <= 180)) return false;
  const k = conductor === 'aluminium' ? 225 : conductor === 'copper-iec' ? 235 : 234.5;
  const ratio = (mean * (k + to)) / (k + from) / figure(reference);
  return ratio >= 0.9 / hair && ratio <= 1.1 * hair;
}

export const winding: Subject<WindingInput> = {
  name: 'winding',
  make: (dice) => {
    const size = dice.chance(0.9) ? dice.log(0.05, 30) : dice.log(1e-4, 1e5);
    const off = dice.pick([0, 0.002, 0.01, 0.02, 0.035, 0.06, 0.2]);
    const one = () => reading(dice, () => size * (1 + dice.between(0, off)), 'Ω', 0.01, 5);
    const leads = dice.pick(['four', 'four', 'four', 'zeroed', 'subtract', 'not-stated', undefined] as const);
    const nameplate = dice.chance(0.1);
    const readings = { UV: one(), VW: one(), WU: one() };
    return {
      readings,
      ...(dice.chance(0.3) && { again: dice.chance(0.5) ? readings : { UV: one(), VW: one(), WU: one() } }),
      ...(dice.chance(0.2) && {
        acrossJoint: reading(dice, () => dice.pick([0.001, 0.004, 0.0499, 0.0501, 0.1]), 'Ω', 0.05, 3),
      }),
      ...(leads !== undefined && { leads }),
      ...((leads === 'subtract' || dice.chance(0.1)) && {
        leadOhms: reading(dice, () => dice.pick([0, 0.1, 0.3]), 'Ω', 0.1, 3),
      }),
      ...(dice.chance(0.3) && { instrument: instrument(dice, [600, 6000]) }),
      ...(dice.chance(0.2) && { kind: dice.pick(['random-wound', 'form-wound'] as const) }),
      ...(dice.chance(0.2) && { connection: dice.pick(['star', 'delta', 'unknown'] as const) }),
      ...(nameplate && {
        reference: reading(dice, () => size * dice.between(0.85, 1.15), 'Ω', 0.1, 5),
        referenceTemperature: reading(dice, () => dice.pick([20, 25]), '°C', 0.1),
        conductor: dice.pick(['copper', 'copper-iec', 'aluminium'] as const),
      }),
      ...((nameplate || dice.chance(0.3)) && { temperature: reading(dice, () => dice.between(15, 60), '°C', 0.1) }),
    };
  },
  verdict: (input) => assessWinding(input).verdict,
  mayGo: (input) => {
    const { readings, leads, leadOhms = missing, instrument: by = {}, kind } = input;
    const meter: Instrument = { ...by, counts: Math.max(1, by.counts ?? 0) };
    // A second set that was begun must pass as the first must, and the connector must not be bad.
    const again = input.again && pairs.some((pair) => input.again?.[pair].kind !== 'missing') ? input.again : readings;
    const [known, second] = [spansOf(readings, meter), spansOf(again, meter)];
    if (known === undefined || second === undefined || jointIsBad(input, meter)) return false;
    if (leads === undefined || leads === 'not-stated') return false;
    const tips = figure(leadOhms);
    if (leads === 'subtract' ? !(tips >= 0) : leadOhms.kind !== 'missing' && !(tips === 0)) return false;
    const off = leads === 'subtract' ? tips : 0;
    // Below an ohm nothing passes with two leads.
    if (leads !== 'four' && [...known, ...second].some(({ lo }) => lo - off < 1 - 1e-9)) return false;
    if ([...known, ...second].some(({ lo }) => !(lo > off))) return false;
    const mean = pairs.reduce((sum, pair) => sum + figure(readings[pair]) - off, 0) / 3;
    const most = (kind === 'form-wound' ? 1 : 2) * hair;
    const passes = (set: Span[]) =>
      worstDeviation(
        set.map((one) => held(one, leads)),
        off,
      ) <= most;
    return passes(known) && passes(second) && fitsNameplate(input, mean);
  },
  lacking: (input, dice) => {
    const key = dice.pick(['readings', 'readings', 'again', 'leads', 'leadOhms'] as const);
    if (key === 'again') return having(input, 'again', having(input.readings, dice.pick(pairs), missing));
    if (key === 'leads') return having(input, 'leads', 'not-stated');
    if (key === 'leadOhms') return { ...input, leads: 'subtract', leadOhms: missing };
    return having(input, 'readings', having(input.readings, dice.pick(pairs), missing));
  },
  worse: (input, dice) => {
    // A bound above the stated range of the meter is a contradiction.
    if (input.instrument?.upperLimit !== undefined) return undefined;
    const open: Reading = { kind: 'over', unit: 'Ω', atLeast: 1e6 };
    return having(input, 'readings', having(input.readings, dice.pick(pairs), open));
  },
  plain: ({ reference: _value, referenceTemperature: _its, again: _second, acrossJoint: _joint, ...rest }) => rest,
};
