import type { Cause } from '../../kernel/vocabulary.ts';
import { causesShown } from '../../visit/words/causes.ts';
import { type Thing, thingsToBring } from './bring.ts';
import type { CallFacts } from './facts.ts';
import { minutesToPlan, type Permit, type Person, people, permits } from './plan.ts';
import { type SafetyWord, safetyWords } from './safety.ts';
import { alsoPossible, type Suspect, suspects } from './suspects.ts';
import { openQuestions, type Question } from './to-ask.ts';

/** What follows from a call, before anybody goes. It proves nothing and replaces nothing. */
export interface CallSheet {
  safety: SafetyWord[];
  /** The suspects that the sheet shows, the first ones first. */
  suspects: Suspect[];
  /** All other families of causes: named by the call as well, or by nothing in it. None is excluded. */
  others: Cause[];
  questions: Question[];
  bring: Thing[];
  people: Person[];
  permits: Permit[];
  /** Minutes at the machine. */
  minutes: { least: number; most: number };
}

export function callSheet(facts: CallFacts): CallSheet {
  const named = suspects(facts);
  const shown = named.slice(0, causesShown);
  const causes = shown.map(({ cause }) => cause);
  return {
    safety: safetyWords(facts),
    suspects: shown,
    others: [...named.slice(causesShown).map(({ cause }) => cause), ...alsoPossible(facts)],
    questions: openQuestions(facts),
    bring: thingsToBring(facts, causes),
    people: people(facts, causes),
    permits: permits(facts),
    minutes: minutesToPlan(facts, causes),
  };
}
