import type { Part } from '../../kernel/vocabulary.ts';
import { capital } from '../../kernel/words/sentences.ts';
import type { Decision } from '../guide/decision.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { questions } from '../steps/questions.ts';
import { proofTexts, suspicionTexts } from '../words/evidence.ts';
import { partNames } from '../words/parts.ts';
import { sheetTexts } from '../words/sheets.ts';

/** One part as the parts desk sees it. */
export interface PartRow {
  part: Part;
  name: string;
  /** What happens to it, in words. */
  what: string;
  /** What its plate says, as noted; empty if nothing is. */
  plate: string;
  why: string;
}

/** The parts that the decision speaks of: to replace first, then suspect, then what stays. */
export function partRows({ replace, suspect, good, excluded }: Decision, visit: VisitRecord): PartRow[] {
  const row = (part: Part, what: string, why: string): PartRow => ({
    ...{ part, what, why },
    name: capital(what === sheetTexts.replace ? partNames[part] : partNames[part].replace(' (mend)', '')),
    plate: plateOf(part, visit),
  });
  return [
    ...replace.map(({ part, proofs }) =>
      row(part, sheetTexts.replace, proofs.map((proof) => proofTexts[proof]).join(' ')),
    ),
    ...suspect.map(({ part, reasons }) =>
      row(part, sheetTexts.suspect, reasons.map((reason) => suspicionTexts[reason]).join(' ')),
    ),
    ...good.map((part) => row(part, sheetTexts.stays, sheetTexts.measuredGood)),
    ...excluded
      .filter(({ part }) => !good.includes(part))
      .map(({ part, by }) => row(part, sheetTexts.excluded, by.map((id) => questions[id].title).join('; '))),
  ];
}

function plateOf(part: Part, { drive, motor }: VisitRecord): string {
  if (part === 'drive') return drive.trim();
  return part === 'motor' ? motor.trim() : '';
}
