import { describe, expect, it } from 'vitest';
import { possibleCauses } from '../../../../src/visit/guide/causes.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import { againstPower } from '../../../../src/visit/guide/power.ts';
import { bend, brake, bridgeIs, busAgain, done, motorWindingIs, seen, strip, windingIs } from './support/answers.ts';
import { bridges, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';
import { deviceEnd, feedbackOff, insulationGood, leadsOff, moving, pluggedAgain } from './support/ways.ts';

/** Rules of the trade, common practice, no source. */
const stateOf = (history: Given[]) => nextStep(visitOf(history));

describe('a stripped drive is enabled', () => {
  const trippedWithoutMotor = [...leadsOff('trips'), strip()];

  it('after output stage and winding passed', () => {
    expect(stateOf(trippedWithoutMotor).due).toBe('retry-stripped');
  });

  it.each([
    ['output stage', bridgeIs(bridges.tooClose, 'left open')],
    ['winding', windingIs(windings.incomplete, 'left open')],
  ] as const)('and not any more once the %s is corrected to undecided', (_part, corrected) => {
    const history = [...trippedWithoutMotor, corrected];
    expect(stateOf(history).due).not.toBe('retry-stripped');
    expect(againstPower(visitOf(history), 'retry-stripped')).toContain('not-passed');
  });
});

describe('a feedback cable that is seen chafed only afterwards', () => {
  const chafed = seen({ feedbackCable: 'chafed' });

  it('is proven where nothing was tried with it plugged', () => {
    expect(stateOf([...feedbackOff('no-trip'), chafed]).decision?.replace.map(({ part }) => part)).toEqual([
      'feedback-cable',
    ]);
  });

  it('is not, where the trip stayed away with the cable plugged and the device off', () => {
    const { decision } = stateOf([...pluggedAgain('trips'), chafed]);
    expect(decision?.replace.map(({ part }) => part)).not.toContain('feedback-cable');
    const early = stateOf([...deviceEnd('no-trip'), chafed]).decision;
    expect(early?.replace.map(({ part }) => part) ?? []).not.toContain('feedback-cable');
  });
});

describe('the drive beside a proven motor, where it trips on braking', () => {
  const visit = (braking: Given): Given[] => [
    ...moving('on-braking'),
    bridgeIs(bridges.good),
    busAgain(),
    braking,
    busAgain(),
    windingIs(windings.unlike),
    motorWindingIs(windings.unlike),
    ...insulationGood,
  ];
  const goodOf = (braking: Given) => {
    const { decision } = stateOf(visit(braking));
    expect(decision?.replace.map(({ part }) => part)).toEqual(['motor']);
    return decision?.good;
  };

  it('stays only where the switch of the braking resistor was measured, or there is none', () => {
    const missing = { kind: 'missing' } as const;
    const inside: Given = [
      'braking',
      { fitted: 'inside', plate: missing, ohms: missing, toPe: missing, toBus: missing, again: false },
    ];
    expect(goodOf(brake('47 Ω | 46.8 Ω | > 20M | > 20M'))).toContain('drive');
    expect(goodOf(inside)).not.toContain('drive');
  });
});

describe('families that a good reading at rest does not exclude', () => {
  it('a switch that never closes reads as well as a sound one', () => {
    const visit = [...moving('on-braking'), brake('47 Ω | 46.8 Ω | > 20M | > 20M')];
    expect(possibleCauses(visitOf(visit))).toContain('braking-circuit');
  });

  it('a hand bends a cable less sharply than the machine does', () => {
    const visit = [...moving('position-or-cable'), bend('steady')];
    expect(possibleCauses(visitOf(visit))).toContain('moving-cable');
  });
});
