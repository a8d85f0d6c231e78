import { listed } from '../../kernel/words/sentences.ts';
import { restartRows } from './rows.ts';
import type { RestartState } from './state.ts';

export const restartTexts = {
  heading: 'Return to service',
  lead: 'What is done after the decision, in this order. It closes the record; it does not release the machine. The site’s own release does that.',
  danger:
    'Lock out, wait and prove it dead again before a hand goes in. Support a hanging axis until its brake has been tested. Nobody is in reach of any axis when one is enabled.',
  otherDecision:
    'The decision has changed since this was filled in. Do not power the machine on it: settle the decision first.',
  notAnswered: 'not answered',
} as const;

const headlines: Record<RestartState['kind'], (state: RestartState) => string> = {
  'trips-again': () => 'It trips again. Switch off and lock out',
  fault: ({ ran }) => (ran ? 'Not in order. Switch off' : 'Not in order. Do not enable'),
  'too-early': ({ ran }) => (ran ? 'Running before its checks. Switch off' : 'Enabled before its checks. Switch off'),
  open: ({ rows }) => (rows.length === 0 ? 'Open: it has not run yet' : `Open: ${rows.length} to do`),
  closed: () => 'Closed: it runs, and everything is in order',
};

export const restartHeadline = (state: RestartState): string => headlines[state.kind](state);

/** What to do next; nothing more to say of a closed record. */
export function restartNext(state: RestartState): string[] {
  const names = listed(state.rows.map((id) => `“${restartRows[id].field.name}”`));
  switch (state.kind) {
    case 'trips-again':
      return [
        'The part that was replaced was not the only cause, or the new one is bad too. Start a new visit for this axis, and compare its readings with these.',
        ...(names === '' ? [] : [`Not in order or left out: ${names}.`]),
      ];
    case 'fault':
      return [`Mend this first, and check it again: ${names}.`];
    case 'too-early':
      return [`Lock out, and do what comes before it: ${names}.`];
    case 'open':
      return names === '' ? ['Let it run through a whole cycle, and stay with it.'] : [];
    case 'closed':
      return ['Come back after an hour. Keep this record with the papers of the axis.'];
  }
}
