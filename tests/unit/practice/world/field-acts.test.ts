import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { bendCable } from '../../../../src/practice/world/bend-cable.ts';
import { measureBraking, measureIdleCores } from '../../../../src/practice/world/field-acts.ts';
import { drawFieldMachine, type FieldMachine } from '../../../../src/practice/world/field-machine.ts';
import { noSlips, type Slips } from '../../../../src/practice/world/slips.ts';
import { tryAgain } from '../../../../src/practice/world/tries.ts';

/** Locked out, supported, and in the hands of a person without slips but these. */
function deadMachine(fault: string, slips: Partial<Slips> = {}, seed = 3): FieldMachine {
  const machine = drawFieldMachine(fault, seeded(seed));
  Object.assign(machine.slips, noSlips(machine.axis, seeded(1)), slips);
  machine.support();
  machine.lockOut();
  return machine;
}

describe('the cable is bent core by core', () => {
  test.each([
    ['bent-open-V', { result: 'opens', core: 'power', again: true }],
    ['bent-leak-U', { result: 'leaks', core: 'power', again: true }],
    ['feedback-cable-intermittent', { result: 'opens', core: 'feedback', again: true }],
    ['bent-open-U', { result: 'opens', core: 'power', again: true }],
    // Open at rest, and so no matter of bending.
    ['pe-broken', { result: 'undecided', leftOpen: true }],
    ['core-broken-W', { result: 'undecided', leftOpen: true }],
    ['core-U-ground', { result: 'undecided', leftOpen: true }],
    ['tuning', { result: 'steady' }],
  ] as const)('%s', (fault, found) => {
    const machine = deadMachine(fault);
    expect(bendCable(machine)).toMatchObject(found);
    expect(machine.state.bent).toBe(false);
    expect(machine.unsafe).toEqual([]);
  });

  test('a fault that the hand does not bring back stays hidden', () => {
    expect(bendCable(deadMachine('bent-open-V', { bendShows: false })).result).toBe('steady');
  });
});

describe('idle cores', () => {
  test('a phase core on a sensor core reads low, and afterwards all idle cores are on the protective bar', () => {
    const machine = deadMachine('core-U-sensor');
    const { cores, lowest } = measureIdleCores(machine);
    expect(cores).toBe('measured');
    expect(lowest.kind === 'value' && lowest.value).toBeLessThan(60e3);
    expect(machine.state.idleCores).toBe('to-pe');
  });

  test('a cable without them has none', () => {
    const machine = deadMachine('tuning');
    machine.axis.parameters = { ...machine.axis.parameters, idleCores: [] };
    expect(measureIdleCores(machine).cores).toBe('none');
  });
});

describe('the braking circuit', () => {
  test('a resistor on its housing reads low to PE', () => {
    const { fitted, toPe } = measureBraking(deadMachine('braking-resistor-earthed'));
    expect(fitted).toBe('external');
    expect(toPe.kind === 'value' && toPe.value).toBeLessThan(6e3);
  });

  test('an open one does not end', () => {
    expect(measureBraking(deadMachine('braking-resistor-open')).ohms.kind).toBe('over');
  });

  test('a shorted transistor reads low to DC−', () => {
    const { toBus } = measureBraking(deadMachine('chopper-shorted'));
    expect(toBus.kind === 'value' && toBus.value).toBeLessThan(10);
  });
});

describe('tries', () => {
  const often = { count: { came: 5, of: 5 } };

  test('are made as often as the guide asks, and counted', () => {
    expect(tryAgain(deadMachine('short-upper-U', often), 'enable')).toEqual({
      ...{ powerAllowed: true, tries: 3, trips: 3, result: 'trips', stage: 'at-enable' },
    });
  });

  test('once by a person who finds that enough, and up to the first trip with the motor on the drive', () => {
    expect(tryAgain(deadMachine('short-upper-U', { ...often, triedOnce: true }), 'enable').tries).toBe(1);
    expect(tryAgain(deadMachine('short-upper-U', often), 'all', true).tries).toBe(1);
  });

  test('a message of missing feedback is no trip', () => {
    const machine = deadMachine('nuisance', often);
    machine.axis.otherMessages.withoutFeedback = true;
    machine.change((state) => ({ ...state, feedbackAtDrive: false }));
    expect(tryAgain(machine, 'power')).toMatchObject({ result: 'no-trip', trips: 0 });
  });
});
