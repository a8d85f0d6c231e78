import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, volts } from '../../../../src/kernel/reading/reading.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import type { Answers, VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import type { PlainRule, PlainStepId } from '../../../../src/visit/steps/rule.ts';
import { rules } from '../../../../src/visit/steps/rules.ts';
import { soundLockout } from '../guide/support/answers.ts';
import { bridges, insulations, isolations, windings } from '../guide/support/readings.ts';

/** What a step does to the machine, and the earlier steps whose correction puts it in question. */
const physical: Record<PlainStepId, [touches: boolean, energy: string, restsOn: StepId[]]> = {
  'find-drive': [false, 'none', []],
  symptom: [false, 'none', []],
  recording: [false, 'none', []],
  inspect: [true, 'none', []],
  'after-change': [true, 'none', []],
  'unplug-feedback': [true, 'none', []],
  'retry-feedback-off': [false, 'power', ['unplug-feedback']],
  'unplug-device-end': [true, 'none', ['retry-feedback-off']],
  'retry-device-end': [false, 'power', ['unplug-device-end']],
  'plug-feedback': [true, 'none', ['retry-device-end']],
  'retry-feedback-on': [false, 'power', ['plug-feedback']],
  'disconnect-leads': [true, 'none', []],
  mechanics: [true, 'none', []],
  bridge: [true, 'none', ['disconnect-leads']],
  'input-circuit': [true, 'none', ['disconnect-leads']],
  braking: [true, 'none', ['disconnect-leads']],
  winding: [true, 'none', ['disconnect-leads']],
  'winding-motor': [true, 'none', ['winding']],
  'bend-test': [true, 'none', ['disconnect-leads']],
  'idle-cores': [true, 'none', ['disconnect-leads']],
  insulation: [true, 'none', ['disconnect-leads']],
  isolation: [true, 'none', ['insulation']],
  'retry-leads-off': [false, 'enable', ['disconnect-leads']],
  'strip-drive': [true, 'none', ['disconnect-leads']],
  'retry-stripped': [false, 'enable', ['strip-drive']],
  reconnect: [
    true,
    'none',
    [
      'bridge',
      'input-circuit',
      'braking',
      'winding',
      'winding-motor',
      'bend-test',
      'idle-cores',
      'insulation',
      'isolation',
    ],
  ],
  'retry-all': [false, 'enable', ['reconnect']],
};

describe('what a step does to the machine', () => {
  it.each(Object.entries(physical))('%s', (id, [touches, energy, restsOn]) => {
    const rule = rules[id as PlainStepId] as PlainRule<PlainStepId>;
    expect([rule.touches, rule.energy, rule.restsOn]).toEqual([touches, energy, restsOn]);
  });

  it('a proof that the drive is dead and a support hold for one stretch of work, and nothing else is inserted but PE', () => {
    const inserted = Object.entries(rules).filter(([id]) => !(id in physical));
    const lasting = inserted.filter(([, rule]) => !('holdsOneStretch' in rule && rule.holdsOneStretch));
    expect(inserted.map(([id]) => id).sort()).toEqual([
      ...['bus-again', 'connect-pe', 'lockout-1', 'lockout-2', 'lockout-3', 'prove-again'],
      ...['support-again', 'support-axis'],
    ]);
    expect(lasting.map(([id]) => id)).toEqual(['connect-pe']);
  });
});

const problemOf = <Id extends StepId>(id: Id, answer: Answers[Id], visit: VisitAnswers = {}) => {
  const all = rules as unknown as Record<StepId, { problem: (one: unknown, on: VisitAnswers) => unknown }>;
  return all[id].problem(answer, visit);
};

describe('an answer that does not suffice is named', () => {
  const drive = (answer: Partial<Answers['find-drive']>) =>
    problemOf('find-drive', { observation: 'looked', axesOnDrive: 3, ...answer });

  it('an indicated axis is one of the drive’s own', () => {
    expect([1, 3].map((indicatedAxis) => drive({ indicatedAxis }))).toEqual([undefined, undefined]);
    expect([0, 4, -1].map((indicatedAxis) => drive({ indicatedAxis }))).toEqual(
      Array(3).fill('indication-contradicts'),
    );
    expect(drive({})).toBe('indication-contradicts');
    expect(drive({ observation: 'not-permitted' })).toBeUndefined();
  });

  it.each<[string, Partial<Answers['symptom']>, string | undefined]>([
    ['nobody counted', {}, undefined],
    ['it came each time', { came: 3, of: 3 }, undefined],
    ['it came without a number of starts', { came: 3 }, undefined],
    ['it came more often than it was started', { came: 4, of: 3 }, 'came-contradicts'],
    ['once, in one start', { came: 1, of: 1, once: true }, undefined],
    ['once, and yet twice', { came: 2, of: 2, once: true }, 'came-contradicts'],
    ['once, in five starts', { came: 1, of: 5, once: true }, 'came-contradicts'],
  ])('how often it came: %s', (_, often, problem) => {
    expect(problemOf('symptom', { when: 'on-enable', gravityLoaded: 'no', ...often } as Answers['symptom'])).toBe(
      problem,
    );
  });

  it('a board that should be reseated and was not', () => {
    const seen = { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' } as const;
    expect(problemOf('inspect', { reseated: 'no', seen } as Answers['inspect'])).toBe('not-done');
    expect(problemOf('inspect', { reseated: 'yes', seen } as Answers['inspect'])).toBeUndefined();
  });

  it('each reading of a braking circuit that is within reach', () => {
    const sound = { plate: ohms(47), ohms: ohms(47), toPe: overOhms(5e7), toBus: overOhms(2e6), again: false };
    const brake = (change: Partial<Answers['braking']>) =>
      problemOf('braking', { fitted: 'external', ...sound, ...change });
    expect(brake({})).toBeUndefined();
    for (const place of ['plate', 'ohms', 'toPe', 'toBus'])
      expect(brake({ [place]: missing }), place).toBe('braking-not-measured');
    expect(brake({ fitted: 'inside', ohms: missing })).toBeUndefined();
  });

  it('idle cores that were measured need a reading, and an over-range its range', () => {
    const idle = (cores: Answers['idle-cores']['cores'], lowest = ohms(5e7) as Answers['idle-cores']['lowest']) =>
      problemOf('idle-cores', { cores, lowest });
    expect([idle('measured'), idle('none', missing), idle('not-done', missing)]).toEqual(Array(3).fill(undefined));
    expect(idle('measured', missing)).toBe('idle-core-not-measured');
    expect(idle('measured', overOhms())).toBe('idle-core-range');
    expect(idle('none', overOhms())).toBeUndefined();
  });

  it.each<[Partial<Answers['lockout-1']>, string | undefined]>([
    [{}, undefined],
    [{ lockedOut: false }, 'not-locked-out'],
    [{ waited: false }, 'not-waited'],
    [{ meterProved: false }, 'meter-not-proved'],
    [{ peProved: false }, 'pe-not-proved'],
    [{ supplyVoltage: missing }, 'supply-not-measured'],
    [{ supplyVoltage: volts(400) }, 'supply-live'],
    [{ outputVoltage: missing }, 'output-not-measured'],
    [{ outputVoltage: volts(400) }, 'output-live'],
    [{ busVoltage: missing }, 'bus-not-measured'],
    [{ busVoltage: volts(400) }, 'bus-not-discharged'],
  ])('a lockout: %j is %s', (change, problem) => {
    expect(problemOf('lockout-1', { ...soundLockout, ...change })).toBe(problem);
  });

  it('the bus once more needs a proven meter and a low reading', () => {
    const again = (meterProved: boolean, busVoltage: Answers['bus-again']['busVoltage']) =>
      problemOf('bus-again', { meterProved, busVoltage });
    expect([again(true, volts(1)), again(false, volts(1)), again(true, missing), again(true, volts(300))]).toEqual([
      undefined,
      'meter-not-proved',
      'bus-not-measured',
      'bus-not-discharged',
    ]);
  });

  it('a step that was not done', () => {
    for (const id of ['support-axis', 'support-again', 'connect-pe', 'unplug-feedback', 'plug-feedback'] as const)
      expect([problemOf(id, { done: false }), problemOf(id, { done: true })], id).toEqual(['not-done', undefined]);
  });

  it('a measurement that decides nothing, unless it is left open; a charged bus can’t be left open', () => {
    const bridge = (assessment: Answers['bridge']['assessment'], leftOpen = false) =>
      problemOf('bridge', { assessment, leftOpen });
    expect([bridge(bridges.good), bridge(bridges.shorted)]).toEqual([undefined, undefined]);
    expect([bridge(bridges.incomplete), bridge(bridges.incomplete, true)]).toEqual(['undecided', undefined]);
    expect([bridge(bridges.busCharged), bridge(bridges.busCharged, true)]).toEqual(Array(2).fill('bus-not-discharged'));
    const findings = [...bridges.good.findings, ...bridges.busCharged.findings];
    expect(bridge({ ...bridges.good, findings }, true)).toBe('bus-not-discharged');
    expect(problemOf('insulation', { assessment: insulations.noTemperature, leftOpen: false })).toBe('undecided');
    for (const id of ['winding', 'winding-motor'] as const)
      expect(problemOf(id, { assessment: windings.incomplete, leftOpen: false }), id).toBe('undecided');
  });

  it('an isolation that is decided for one part asks for the other, unless it is left open', () => {
    const isolation = (assessment: Answers['isolation']['assessment'], leftOpen = false) => {
      const answer = { assessment, leftOpen };
      return problemOf('isolation', answer, { isolation: { seq: 1, answer } });
    };
    expect([isolation(isolations.bothGood), isolation(isolations.bothBad)]).toEqual([undefined, undefined]);
    for (const oneOnly of [isolations.cableBadMotorOpen, isolations.motorBadCableOpen])
      expect([isolation(oneOnly), isolation(oneOnly, true)]).toEqual(['part-open', undefined]);
    for (const open of [isolations.joinedUnclear, isolations.contradiction])
      expect([isolation(open), isolation(open, true)]).toEqual(['undecided', undefined]);
  });
});
