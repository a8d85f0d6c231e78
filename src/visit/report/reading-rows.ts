import type { Finding, Severity } from '../../kernel/assessment/assessment.ts';
import type { Outcome } from '../../kernel/form/calculator-form.ts';
import type { FormField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { severityWords } from '../../kernel/form/verdict-words.ts';
import { formatReading } from '../../kernel/reading/format-reading.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import type { LimitSnapshot } from '../record/snapshot-schema.ts';
import type { StepRecord } from '../record/visit-schema.ts';

/** What was read between two terminals, and what was said about it. */
export interface ReadingRow {
  id: string;
  terminals: string;
  /** With its unit, as it was judged: `482 kΩ`. */
  reading: string;
  /** The figure of the limit, and the letters of all limits behind the verdict in the list below: `10 % [a, b]`. */
  limit: string;
  /** Of this reading; a dash if the rule says nothing about it alone. */
  verdict: string;
  /** `06:28`, with its date if that is not the date of the step. */
  time: string;
}

/** What was noted beside the readings, such as temperature and test voltage, with units. */
export interface Circumstance {
  name: string;
  text: string;
}

type Judged = Extract<Outcome, { state: 'judged' }>;

/** The weightiest first; the others say nothing about a reading. */
const weights: Severity[] = ['stop', 'fail', 'undecided', 'pass'];

const aboutInstrument = new Set(instrumentFields('').map(({ id }) => id));

/** A resistance or the bus voltage is read between terminals; all else describes how. */
function isReadAtTerminals(field: FormField): boolean {
  if (field.kind !== 'reading' || aboutInstrument.has(field.id)) return false;
  return field.quantity === 'resistance' || field.id === 'busVoltage';
}

/** A row for each reading that was taken. `limits`: those of the step, in the order of their letters. */
export function readingRows(
  fields: readonly FormField[],
  { assessment, read }: Judged,
  step: StepRecord,
  limits: readonly LimitSnapshot[],
): ReadingRow[] {
  return fields.filter(isReadAtTerminals).flatMap((field) => {
    const reading = formatReading(read.readings[field.id] ?? { kind: 'missing' });
    if (reading === '') return [];
    const behind = findingsOf(assessment.findings, field.id);
    const severity = behind[0]?.severity;
    const at = step.readAt[field.id] ?? step.at;
    return [
      {
        id: field.id,
        terminals: field.name,
        reading,
        limit: limitText(behind, limits),
        verdict: severity === undefined ? '–' : severityWords[severity],
        time: at.slice(0, 10) === step.at.slice(0, 10) ? at.slice(11, 16) : shownTime(at),
      },
    ];
  });
}

/** The findings of the greatest weight that rest on a reading: with one that fails, no other counts. */
function findingsOf(findings: readonly Finding[], field: string): Finding[] {
  const own = findings.filter(({ readings, severity }) => readings.includes(field) && weights.includes(severity));
  const weightiest = weights.find((weight) => own.some(({ severity }) => severity === weight));
  return own.filter(({ severity }) => severity === weightiest);
}

function limitText(behind: readonly Finding[], limits: readonly LimitSnapshot[]): string {
  const ids = new Set<string>(behind.flatMap((finding) => finding.limits));
  const named = limits.flatMap(({ id, value }, index) => (ids.has(id) ? [{ value, letter: limitLetter(index) }] : []));
  const [first] = named;
  return first === undefined ? '' : `${first.value} [${named.map(({ letter }) => letter).join(', ')}]`;
}

/** a, b … z, aa, ab … */
export function limitLetter(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26));
  return index < 26 ? letter : limitLetter(Math.floor(index / 26) - 1) + letter;
}

/** Entries beside the readings; a choice that still has its initial value is left out: the sentences cover it. */
export function circumstances(fields: readonly FormField[], { read }: Judged, step: StepRecord): Circumstance[] {
  return fields.flatMap((field): Circumstance[] => {
    if (isReadAtTerminals(field) || aboutInstrument.has(field.id)) return [];
    const typed = (step.form[field.id] ?? '').trim();
    const text = field.kind === 'reading' ? formatReading(read.readings[field.id] ?? { kind: 'missing' }) : typed;
    if (text === '') return [];
    if (field.kind !== 'choice') return [{ name: field.name, text }];
    if (text === field.initial || field.id === 'occasion') return [];
    return [{ name: field.name, text: field.options.find(({ value }) => value === text)?.label ?? text }];
  });
}
