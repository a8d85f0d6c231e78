import { expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { answerStep } from '../../../../src/visit/record/change-visit.ts';
import { deadProofs } from '../../../../src/visit/report/dead-proofs.ts';
import { measuredReports, meterText } from '../../../../src/visit/report/measured.ts';
import { driveOnly, type Entry, lift, locked, motorAndCable, visitOf } from '../../../support/marrow-bay-visits.ts';

// What the annex says of each point is what was typed there; the readings are invented.

const pointByPoint = {
  ...{ lockedOut: 'yes', waited: 'yes', meterProved: 'yes', peProved: 'yes' },
  ...{ supplyEachAc: '0.2', supplyPeAc: '0.1', supplyEachDc: '0', supplyPeDc: '0' },
  ...{ outputEachAc: '0.1 V', outputRest: 'yes' },
  ...{ busBetween: '12 V', busPlusPe: '30\u00a0mV', busMinusPe: '75 V' },
};
const proofsOf = (visit: ReturnType<typeof visitOf>) => deadProofs(evaluate(visit, visit.changedAt));
const upTo = (entries: readonly Entry[], id: string) =>
  entries.slice(
    0,
    entries.findIndex(([step]) => step === id),
  );

test('each point has its reading as it was judged, its limit, a verdict and the time', () => {
  const visit = visitOf([...upTo(driveOnly, 'lockout-1'), ['lockout-1', pointByPoint]]);
  const [proof, ...others] = proofsOf(visit);
  expect(others).toEqual([]);
  expect(proof?.points.map(({ point, reading, verdict }) => [point, reading, verdict])).toEqual([
    ['Supply terminals, AC, each to each', '0.2 V', 'Passes'],
    ['Supply terminals, AC, each to PE', '0.1 V', 'Passes'],
    ['Supply terminals, DC, each to each', '0 V', 'Passes'],
    ['Supply terminals, DC, each to PE', '0 V', 'Passes'],
    ['U, V, W, AC, each to each', '0.1 V', 'Passes'],
    ['DC bus, DC+ to DC−', '12 V', 'Passes'],
    ['DC bus, DC+ to PE', '30 mV', 'Passes'],
    ['DC bus, DC− to PE', '75 V', 'Stop'],
  ]);
  expect(new Set(proof?.points.map(({ limit }) => limit.replace('\u00a0', ' ')))).toEqual(new Set(['50 V']));
  expect(proof?.points.every(({ time }) => /^06:\d\d$/.test(time))).toBe(true);
  expect(proof?.rest).toEqual(['U, V, W']);
});

test('what can not be read stands as it was typed, and passes nothing', () => {
  const visit = visitOf([...upTo(driveOnly, 'lockout-1'), ['lockout-1', { ...pointByPoint, busBetween: 'what' }]]);
  expect(proofsOf(visit)[0]?.points.find(({ id }) => id === 'busBetween')).toMatchObject({
    reading: 'what',
    verdict: 'Open',
  });
});

test('each lockout of the way has its table, in order, and a replaced proof keeps its own', () => {
  const titles = proofsOf(visitOf(driveOnly)).map(({ title }) => title);
  expect(titles).toEqual(['Lock out, wait, measure the DC bus', 'Lock out again, wait, measure the DC bus']);
  const first = visitOf([...upTo(motorAndCable, 'lockout-1'), ['lockout-1', locked]]);
  const next = { ...first, stretch: first.stretch + 1 };
  const again = answerStep(next, 'lockout-1', { form: pointByPoint }, '2026-03-04T09:00:00+01:00');
  expect(proofsOf(again).map(({ points }) => points.length)).toEqual([3, 8]);
});

test('the instrument has its range beside its accuracy', () => {
  const noted = [
    { what: 'Multimeter', identification: 'M-07', accuracy: '1.2 %', smallest: '0.1 Ω', largest: '60 MΩ' },
  ];
  const visit = visitOf(driveOnly, { instruments: noted });
  const text = 'Multimeter, M-07, 1.2 %, 0.1 Ω to 60 MΩ';
  expect(measuredReports(evaluate(visit, visit.changedAt), ['bridge'])[0]?.instrument).toBe(text);
  expect(meterText(visit)).toBe(text);
  expect(meterText(visitOf([], { ...lift, instruments: [] }))).toBe('not noted');
});
