import { describe, expect, it } from 'vitest';
import { stepIds } from '../../../../src/visit/steps/ids.ts';
import { Corrections } from './support/corrections.ts';
import { isolationClassNames } from './support/options.ts';
import { Walk } from './support/walk.ts';

describe('every state that a visit can reach from the empty record', () => {
  const walk = new Walk();
  const decisions = [...walk.kinds.values()].reduce((sum, count) => sum + count, 0);
  console.info(
    [
      `state walk: ${walk.states} states, ${walk.transitions} transitions, ${walk.variants} variants`,
      `${decisions} decisions (${[...walk.kinds].map(([kind, count]) => `${kind} ${count}`).join(', ')})`,
      `longest visit ${walk.longest} answers, ${isolationClassNames.length} combinations of isolation`,
    ].join('; '),
  );

  it('keeps every rule of safety and proof', () => {
    const found = [...walk.faults].map(([rule, { count, example }]) => `${rule}: ${count} times, first${example}`);
    expect(found.join('\n\n')).toBe('');
  });

  it('reaches every kind of decision', () => {
    expect([...walk.kinds.keys()].sort()).toEqual([
      'inconclusive',
      'mechanical',
      'no-fault-found',
      'replace',
      'undecided',
    ]);
  });

  it('keeps them when any earlier answer is changed to any other, and the visit continues', () => {
    const corrections = new Corrections(walk.ways.values());
    console.info(`${walk.ways.size} ways, ${corrections.changes} changes, ${corrections.states} states after them`);
    expect([...corrections.faults].map(([rule, example]) => `${rule}, first${example}`).join('\n\n')).toBe('');
    expect(corrections.changes).toBeGreaterThan(15_000);
    // Half a minute on an idle core; other work on the machine takes its share.
  }, 300_000);

  it('asks for every step of the guide but those that only a break or a correction asks for', () => {
    const never = stepIds.filter((id) => !walk.steps.has(id));
    expect(never).toEqual(['prove-again', 'support-again', 'connect-pe']);
  });
});
