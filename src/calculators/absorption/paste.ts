import type { Typed } from '../../kernel/form/field.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import { absorptionField, absorptionTimes } from './rule/input.ts';
import { markName } from './stopwatch.ts';

export interface Pasted {
  /** Readings as texts, by field. */
  taken: Typed;
  /** Lines that could not be read, each with the reason, so that no line is dropped silently. */
  leftOut: { line: string; reason: string }[];
}

const asClock = /^(\d{1,2}):([0-5]\d)$/;
const line = /^(\d{1,2}:\d{2}|[\d.,]+\s*[a-z]+)\s*[\t;,:=|]?\s*(.+)$/i;

/** Reads lines such as `30 s  450M`, `1 min; 1.2 GΩ` and `10:00<tab>1.8G`. */
export function parsePasted(text: string): Pasted {
  const pasted: Pasted = { taken: {}, leftOut: [] };
  for (const one of text.split(/\r?\n/).map((part) => part.trim())) {
    if (one !== '') take(one, pasted);
  }
  return pasted;
}

function take(one: string, { taken, leftOut }: Pasted): void {
  const leave = (reason: string) => leftOut.push({ line: one, reason });
  const [, time = '', reading = ''] = line.exec(one) ?? [];
  if (time === '') {
    leave('Write the time with its unit first, then the reading: 30 s 450M, or 0:30 450M.');
    return;
  }
  const seconds = secondsOf(time);
  const mark = absorptionTimes.find((at) => seconds !== undefined && Math.abs(at - seconds) < 1e-6);
  const result = parseReading(reading, 'resistance');
  if (mark === undefined)
    leave(`There is no field for this time. The fields are ${absorptionTimes.map(markName).join(', ')}.`);
  else if (!result.ok) leave(result.error.message);
  else if (result.reading.kind === 'missing') leave('There is no reading on this line.');
  else if (absorptionField(mark) in taken) leave('This time came before. The first one was taken.');
  else taken[absorptionField(mark)] = reading.trim();
}

function secondsOf(text: string): number | undefined {
  const clock = asClock.exec(text);
  if (clock !== null) return Number(clock[1]) * 60 + Number(clock[2]);
  const result = parseReading(text, 'seconds');
  return result.ok && result.reading.kind === 'value' ? result.reading.value : undefined;
}
