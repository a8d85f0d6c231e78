import { fieldCauses } from '../../../src/practice/world/field-mix.ts';
import { share } from './bars.ts';
import { type FieldResult, fieldResults } from './judge-visit.ts';
import type { FieldOutcome } from './play-field.ts';

const titles: Record<FieldResult, string> = {
  proven: 'proven',
  concluded: 'concluded',
  'nothing-named': 'none named',
  'rightly-open': 'open, listed',
  open: 'open',
  'sound-suspect': 'suspect',
  'by-exclusion': 'exclusion',
  'false-no-fault': 'false none',
  'sound-proven': 'sound bad',
  'missed-beside': 'missed',
};

const meanings: Record<FieldResult, string> = {
  proven: 'right: every bad part proven, and no other',
  concluded: 'right: nothing is bad, and the decision says so or finds the mechanics',
  'nothing-named': 'right: nothing is bad, nothing is named or suspect; the visit ends open',
  'rightly-open': 'no part proven, and the family of the cause is listed as possible',
  open: 'no part proven, and the family of the cause is not listed',
  'sound-suspect': 'nothing is bad, and a sound part is suspect, not proven',
  'by-exclusion': 'a part named without proof',
  'false-no-fault': 'false “no fault found”',
  'sound-proven': 'a sound part proven bad',
  'missed-beside': 'a bad part not named beside a proven one',
};

const width = (result: FieldResult) => titles[result].length + 2;
const labelWidth = 54;

/** Shares of the visits to each cause, in per cent, one line each. */
export function tableByCause(outcomes: readonly FieldOutcome[]): string[] {
  const head = fieldResults.map((result) => titles[result].padStart(width(result))).join('');
  const lines = fieldCauses.flatMap(({ id, label, weight }) => {
    const of = outcomes.filter(({ cause }) => cause === id);
    if (of.length === 0) return [];
    const cells = fieldResults.map((result) => percent(share(of, result)).padStart(width(result)));
    const steps = of.reduce((sum, outcome) => sum + outcome.steps, 0) / of.length;
    const unsafe = of.reduce((sum, outcome) => sum + outcome.unsafe.length, 0);
    const tail = `${String(unsafe).padStart(8)}${steps.toFixed(1).padStart(7)}`;
    return [
      `${label.padEnd(labelWidth)}${String(weight).padStart(6)}${String(of.length).padStart(8)}${cells.join('')}${tail}`,
    ];
  });
  return [`${'cause'.padEnd(labelWidth)}weight  visits${head}  unsafe  steps`, ...lines];
}

/** The shares of all visits, one line each. */
export function sharesOf(outcomes: readonly FieldOutcome[]): string[] {
  const lines = fieldResults.map(
    (result) => `${(100 * share(outcomes, result)).toFixed(1).padStart(6)} %  ${meanings[result]}`,
  );
  const closed = 100 * share(outcomes, 'proven', 'concluded');
  const right = 100 * share(outcomes, 'proven', 'concluded', 'nothing-named');
  const unsafe = outcomes.filter((outcome) => outcome.unsafe.length > 0).length;
  return [
    ...lines,
    `${closed.toFixed(1).padStart(6)} %  right, and closed`,
    `${right.toFixed(1).padStart(6)} %  right in all: proven, or rightly nothing replaced`,
    `${String(unsafe).padStart(6)}    visits with an unsafe step`,
    familiesListed(outcomes),
  ];
}

/** A dot for none, so that the rest can be seen. */
function percent(value: number): string {
  return value === 0 ? '·' : String(Math.round(100 * value));
}

/** A list of all families would always hold the right one: how long the lists are, and how early they name it. */
function familiesListed(outcomes: readonly FieldOutcome[]): string {
  const listed = outcomes.filter(({ possible }) => possible.length > 0);
  const mean = listed.reduce((sum, { possible }) => sum + possible.length, 0) / Math.max(1, listed.length);
  const early = listed.filter(({ possible, family }) => possible.slice(0, 6).includes(family)).length;
  const inFirst = Math.round((100 * early) / Math.max(1, listed.length));
  return `Families left possible: ${mean.toFixed(1)} on average; that of the cause among the first six in ${inFirst} % of these visits`;
}
