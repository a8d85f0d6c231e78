import { expect, it } from 'vitest';
import { type FindingOf, findingMaker, type Nothing, step } from '../../../../src/kernel/assessment/assessment.ts';
import { type HeadlineWords, headlineFrom } from '../../../../src/kernel/words/headlines.ts';

// No source: how the project words its headlines.

interface Payloads {
  broken: { part: string };
  odd: Nothing;
  unread: { what: string };
}

const finding = findingMaker<Payloads>();
const words: HeadlineWords<FindingOf<Payloads>> = {
  found: { broken: ({ part }) => `${part} is broken`, odd: () => 'one is odd' },
  missing: { unread: ({ what }) => what },
};
const said = (verdict: 'go' | 'no-go' | 'undecided', ...findings: FindingOf<Payloads>[]) =>
  headlineFrom({ verdict, findings, next: [step('none')] }, words, 'all is well');
const broken = (part: string) => finding('broken', 'fail', { part });
const unread = (what: string) => finding('unread', 'undecided', { what });

it('of a no-go has at most two facts, each once, in the order of the table', () => {
  expect(said('no-go', finding('odd', 'fail'), broken('A'))).toBe('A is broken; one is odd');
  expect(said('no-go', broken('A'), broken('A'), broken('B'), broken('C'))).toBe('A is broken; B is broken');
});

it('of undecided has what was found first, and what is missing', () => {
  expect(said('undecided', unread('V'), unread('W'))).toBe('Still missing: V and W');
  expect(said('undecided', unread('U'), unread('V'), unread('W'), unread('PE'))).toBe('Still missing: U, V and more');
  expect(said('undecided', finding('odd', 'undecided'), unread('W'))).toBe('One is odd; still missing: W');
});

it('takes nothing from findings that did not decide', () => {
  expect(said('no-go', broken('A'), unread('W'))).toBe('A is broken');
  expect(said('undecided', finding('odd', 'caution'), unread('W'))).toBe('Still missing: W');
  expect(said('go', finding('odd', 'pass'))).toBe('All is well');
});
