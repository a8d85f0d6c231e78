import { readCall } from '../../../src/call/form.ts';
import { type CallSheet, callSheet } from '../../../src/call/rule/call-sheet.ts';
import type { CallFacts } from '../../../src/call/rule/facts.ts';

/** A call of which nothing is known. */
export const nothingSaid: CallFacts = readCall({});

export const sheetOf = (said: Partial<CallFacts>): CallSheet => callSheet({ ...nothingSaid, ...said });
