import { describe, expect, test } from 'vitest';
import { calculator as isolationForm, isolationInput } from '../../../../src/calculators/isolation/form.ts';
import { contradicts, stagesAsked } from '../../../../src/calculators/isolation/stages-asked.ts';
import type { Typed } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import { liftVisit } from '../visits.ts';

const joined: Typed = {
  joinedU: '3.1M',
  joinedV: '2.9M',
  joinedW: '3.2M',
  joinedPE: '0.3 Ω',
  testVoltage: '500',
  windingTemperature: '32',
};
const input = (typed: Typed) => isolationInput(readForm(isolationForm.fields, typed));

function assessed(typed: Typed) {
  const outcome = isolationForm.judge(typed);
  if (outcome.state !== 'judged') throw new Error(`not judged: ${outcome.state}`);
  return outcome.assessment;
}

describe('a stage', () => {
  test('without an entry was not taken', () => {
    expect(Object.keys(input(joined))).not.toContain('cable');
    expect(Object.keys(input({ ...joined, cableU: ' ', cableV: '-' }))).not.toContain('cable');
  });

  test('with one reading was begun', () => {
    expect(input({ ...joined, motorU: '3M' }).motor).toMatchObject({ U: { value: 3e6 }, V: { kind: 'missing' } });
  });

  test('of the bonded row counts by itself', () => {
    const taken = input({ ...joined, bondedU: '2G' });
    expect(taken.bonded?.U).toMatchObject({ value: 2e9 });
    expect(taken.cable).toBeUndefined();
  });
});

describe('the stages open', () => {
  test('the cable while the joined stage is good, since only its bonded row shows a leak from core to core', () => {
    const good = { ...joined, joinedU: '>700M', joinedV: '>700M', joinedW: '>700M' };
    expect(stagesAsked(assessed(good))).toEqual(['cable']);
    expect(stagesAsked(assessed({ ...good, suspectedAnyway: 'yes' }))).toEqual(['cable']);
  });

  test('the cable after a bad joined stage, then the motor', () => {
    expect(stagesAsked(assessed(joined))).toEqual(['cable']);
    const cable = { cableU: '2G', cableV: '2G', cableW: '2G', cablePE: '2G' };
    const bonded = { bondedU: '2G', bondedV: '2G', bondedW: '2G' };
    expect(stagesAsked(assessed({ ...joined, ...cable }))).toContain('cable');
    expect(stagesAsked(assessed({ ...joined, ...cable, ...bonded }))).toEqual(['motor']);
    expect(stagesAsked(undefined)).toEqual([]);
  });
});

describe('what else is stated', () => {
  test('and what is not stated, counts as not known', () => {
    expect(input(joined)).toMatchObject({ idleCores: 'not-stated', filter: 'not-stated', cableMaterial: 'not-stated' });
    expect(input(joined).moreOfMotor).toEqual({ again: { kind: 'missing' }, sister: { kind: 'missing' } });
    expect(input({ ...joined, idleCores: 'to-pe', filter: 'fitted', cableMaterial: 'pvc' })).toMatchObject({
      ...{ idleCores: 'to-pe', filter: 'fitted', cableMaterial: 'pvc' },
    });
  });

  test('is read for its own part', () => {
    const more = { cableAgain: '3M', cableDried: 'yes', motorSister: '700M', motorDried: 'no', peAgain: '0.3 Ω' };
    const { moreOfCable, moreOfMotor, peAgain } = input({ ...joined, ...more });
    expect(moreOfCable).toMatchObject({ again: { value: 3e6 }, sister: { kind: 'missing' }, dried: 'yes' });
    expect(moreOfMotor).toMatchObject({ again: { kind: 'missing' }, sister: { value: 700e6 }, dried: 'no' });
    expect(peAgain).toMatchObject({ value: 0.3 });
  });

  test('of the cable has its units', () => {
    const typed = input({ ...joined, cableMetres: '56 m', cableTemperature: '79', temperatureUnit: 'F' });
    expect(typed.cableMetres).toMatchObject({ value: 56 });
    expect(typed.cableTemperature).toMatchObject({ value: expect.closeTo(26.1, 1) });
  });

  test('one reading of U, V and W joined stands for the three', () => {
    const { joinedU: _u, joinedV: _v, joinedW: _w, ...rest } = joined;
    const typed = { ...rest, joinedTogether: '3M', motorTogether: '4M' };
    expect(input(typed).joined.together).toMatchObject({ value: 3e6 });
    expect(input(typed).motor?.together).toMatchObject({ value: 4e6 });
    expect(assessed(typed).findings.map(({ code }) => code)).toContain('stage-bad');
  });
});

test('contradicting stages are recognised', () => {
  expect(contradicts(assessed(liftVisit('isolation')))).toBe(false);
  const impossible = liftVisit('isolation', { joinedU: '300M', joinedV: '300M', joinedW: '300M' });
  expect(contradicts(assessed(impossible))).toBe(true);
});
