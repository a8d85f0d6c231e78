import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculator as bridgeForm } from '../../../src/calculators/bridge/form.ts';
import { calculator as insulationForm } from '../../../src/calculators/insulation/form.ts';
import { calculator as isolationForm } from '../../../src/calculators/isolation/form.ts';
import type { CalculatorForm } from '../../../src/kernel/form/calculator-form.ts';
import type { Typed } from '../../../src/kernel/form/field.ts';
import { type VisitCase, visitCaseSchema } from '../../../src/library/cases/case-schema.ts';
import { root } from '../../tools/paths.ts';

export const names = ['bridge', 'insulation', 'isolation'] as const;

type WorkedName = (typeof names)[number];

export const forms = { bridge: bridgeForm, insulation: insulationForm, isolation: isolationForm };

/** A form as one of many, for tests that treat all three alike. */
export const anyForm = (name: WorkedName): CalculatorForm => forms[name];

const folder = join(root, 'content/cases');

/** tests/content/cases.test.ts compares all of them with calculators and guide. */
export const visits: { id: string; visit: VisitCase }[] = readdirSync(folder).map((file) => ({
  id: file.replace(/\.json$/, ''),
  visit: visitCaseSchema.parse(JSON.parse(readFileSync(join(folder, file), 'utf8'))),
}));

/** What the Lift's visit typed into one calculator, with changes. */
export function liftVisit(name: WorkedName, changes: Typed = {}): Typed {
  const lift = visits.find(({ id }) => id === 'marrow-bay-lift');
  if (lift === undefined) throw new Error('the worked visit is gone');
  return { ...lift.visit.forms[name], ...changes };
}
