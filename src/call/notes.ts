import { shownTime } from '../kernel/time/iso-time.ts';
import { type Form, textOf } from '../visit/steps/fields.ts';
import { readCall } from './form.ts';
import type { Trial } from './rule/facts.ts';
import { beforeTexts, plannedTexts, seenTexts, trialTexts } from './words/said.ts';

/** What the caller said besides machine, axis, message and plates, and besides the answers of a step: title and words. */
export function saidLines(form: Form): [string, string][] {
  const { before, nothingBefore, seen, nothingSeen, tried, resets } = readCall(form);
  const text = (id: string) => textOf(form, id).trim();
  const results = (Object.keys(tried) as Trial[]).flatMap((name) => {
    const result = tried[name];
    return result === undefined || result === 'not-tried' ? [] : [trialTexts[name][result]];
  });
  const lines: Lines = [
    ['By', [text('caller')]],
    ['The moment', [text('detail')]],
    ['Before', [...before.map((one) => beforeTexts[one].reason), nothingBefore && 'nothing', text('beforeWords')]],
    ['Seen', [...seen.map((one) => seenTexts[one].reason), nothingSeen && 'nothing, from outside', text('seenWords')]],
    ['Tried', [...results, resets !== undefined && `reset and started ${resets} times`]],
    ['Spare parts on site', [text('spares')]],
    ['Must run again', [text('until')]],
  ];
  return joined(lines);
}

/** What shows on the sheet only by what follows from it: the visit has no other place for it. */
function plannedLines(form: Form): [string, string][] {
  const { again, propped, sharedDrive, high, switcher } = readCall(form);
  const lines: Lines = [
    ['How often', [again && plannedTexts.again[again]]],
    [
      'The axis',
      [
        propped && plannedTexts.propped[propped],
        sharedDrive && plannedTexts.sharedDrive[sharedDrive],
        high && plannedTexts.high[high],
      ],
    ],
    ['On site', [switcher && plannedTexts.switcher[switcher]]],
  ];
  return joined(lines);
}

type Lines = readonly [string, readonly (string | false | undefined)[]][];

/** Each title with what was said to it; without those of which nothing was. */
function joined(lines: Lines): [string, string][] {
  return lines.flatMap(([title, parts]): [string, string][] => {
    const said = parts.filter(Boolean).join(', ');
    return said === '' ? [] : [[title, said]];
  });
}

/** All of it for the notes of a visit. `saidAt`: ISO time of the call. */
export function callNotes(form: Form, saidAt: string): string {
  const lines = [...saidLines(form), ...plannedLines(form)].map(([title, said]) => `${title}: ${said}.`);
  return [`Reported on the phone, ${shownTime(saidAt)}, not measured.`, ...lines].join('\n');
}
