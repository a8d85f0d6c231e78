import type { StepId } from './ids.ts';

/** Steps that are done at one place, one right after the other: they are shown on one screen. */
const sheets: readonly (readonly StepId[])[] = [
  ['find-drive', 'symptom'],
  ['inspect', 'disconnect-leads'],
  ['bus-again', 'winding'],
  ['idle-cores', 'insulation'],
];

/** Whether `next` is shown below `id` once `id` is answered. */
export function sharesSheet(id: StepId, next: StepId): boolean {
  return sheets.some((sheet) => sheet.includes(id) && sheet.indexOf(next) > sheet.indexOf(id));
}
