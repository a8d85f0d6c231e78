import { tripClasses } from '../../src/practice/simulator/trip-run/trip-classes.ts';
import { type Answer, confusion, judgedTrips } from '../support/trip-confusion.ts';

/** Wrong statements that are borne, as a share of all that point somewhere. */
const mostWrong = 0.02;

/**
 * What the calculator says of so many simulated trips, drawn from this seed: where it points by class, and which findings say
 * something untrue. The slope of the current may never.
 */
export function proveTrace(trips: number, seed: number): boolean {
  const all = judgedTrips(Math.ceil(trips / tripClasses.length), seed);
  const table = confusion(all);
  console.table(table);
  const sum = (answer: Answer) => tripClasses.reduce((total, kind) => total + table[kind][answer], 0);
  const statements = sum('first') + sum('among') + sum('wrong');
  const untrue = new Map<string, number>();
  for (const code of all.flatMap((one) => one.untrue)) untrue.set(code, (untrue.get(code) ?? 0) + 1);
  const said = (start: string) =>
    all.flatMap(({ assessment }) => assessment.findings).filter(({ code }) => code.startsWith(start)).length;
  const slopes = ['slope-for', 'slope-of-one', 'slope-against'];
  console.log(`${all.length} trips, ${statements} statements, ${sum('wrong')} wrong`);
  console.log(`slope: ${slopes.map((code) => `${code} ${said(code)}, untrue ${untrue.get(code) ?? 0}`).join('; ')}`);
  for (const [code, count] of untrue) console.log(`untrue: ${code} ${count} of ${said(code)}`);
  for (const { trip, seed: drawn, answer, assessment } of all) {
    if (answer === 'wrong') console.log(`wrong: ${trip.kind}, seed ${drawn}: ${assessment.points.join(', ')}`);
  }
  return sum('wrong') <= mostWrong * statements && slopes.every((code) => !untrue.has(code));
}
