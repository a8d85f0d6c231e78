import { expect, test } from 'vitest';
import { bentCable, damagedCable } from '../../../../src/practice/figures/bent-cable/model.ts';
import { exactInstruments, middle } from '../../../../src/practice/figures/middle-axis.ts';
import { asFound, bondedExcept, cableFree } from '../../../../src/practice/simulator/axis-state.ts';
import { measure } from '../../../../src/practice/simulator/measure.ts';

const kinds = (bent: ReturnType<typeof bentCable>) => Object.values(bent.loops).map(({ reading }) => reading.kind);

test.each([0, 0.4, 0.8, 1.6, 2])('with the bend at %d m neither fault shows', (place) => {
  for (const fault of ['bent-open-U', 'bent-leak-U'] as const) {
    const bent = bentCable(fault, place);
    expect(kinds(bent)).toEqual(['value', 'value', 'value']);
    expect(bent.insulation.reading.kind).toBe('over');
  }
});

test.each([1, 1.2, 1.4])('with the bend at %d m the broken core opens both of its pairs', (place) => {
  const bent = bentCable('bent-open-U', place);
  expect(kinds(bent)).toEqual(['over', 'value', 'over']);
  expect(bent.insulation.reading.kind).toBe('over');
});

test('bent at the damage, the leak shows in the insulation and not in the loops', () => {
  const bent = bentCable('bent-leak-U', 1.2);
  expect(kinds(bent)).toEqual(['value', 'value', 'value']);
  expect(bent.insulation.reading).toMatchObject({ kind: 'value', value: 0 });
});

test('the readings are those of the simulator', () => {
  const state = { ...cableFree(asFound(20, 20)), bent: true, jumpers: bondedExcept('U') };
  const leads = { red: 'cable.drive.U', black: 'ground' };
  const again = measure(damagedCable('bent-leak-U'), state, exactInstruments, 'insulation', leads, middle);
  expect(bentCable('bent-leak-U', 1.2).insulation).toEqual(again);
});
