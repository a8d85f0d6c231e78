import { describe, expect, it } from 'vitest';
import {
  busProofProblem,
  busReadingFor,
  chargedSince,
  isBusProof,
  isDeadProof,
  lockoutBroken,
  newestBusReading,
  newestLockout,
  wasPowered,
} from '../../../../src/visit/guide/dead-proofs.ts';
import { stepIds } from '../../../../src/visit/steps/ids.ts';
import {
  brake,
  bridgeIs,
  busAgain,
  done,
  insulationIs,
  isolationIs,
  lockout,
  mechanics,
  proveAgain,
  retry,
  seen,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const tested = insulationIs(insulations.good);
const off = done('disconnect-leads');

describe('the steps that show the drive dead', () => {
  it('are three lockouts and their repetition; the bus alone is measured besides', () => {
    expect(stepIds.filter(isDeadProof).sort()).toEqual(['lockout-1', 'lockout-2', 'lockout-3', 'prove-again']);
    expect(stepIds.filter((id) => isBusProof(id) && !isDeadProof(id))).toEqual(['bus-again']);
  });

  it('have the problem of their own answer', () => {
    expect(busProofProblem(visitOf([]), 'lockout-1')).toBeUndefined();
    expect(busProofProblem(visitOf([]), 'bus-again')).toBeUndefined();
    expect(busProofProblem(visitOf([lockout(1)]), 'lockout-1')).toBeUndefined();
    expect(busProofProblem(visitOf([lockout(1, { waited: false })]), 'lockout-1')).toBe('not-waited');
    expect(busProofProblem(visitOf([lockout(1), busAgain('60 V')]), 'bus-again')).toBe('bus-not-discharged');
    expect(busProofProblem(visitOf([lockout(1), busAgain('60 V')]), 'lockout-1')).toBeUndefined();
  });
});

describe('the newest', () => {
  it('reading of the bus counts, good or bad', () => {
    expect(newestBusReading(visitOf([]))).toBeUndefined();
    expect(newestBusReading(visitOf([lockout(1)]))).toBe('lockout-1');
    expect(newestBusReading(visitOf([lockout(1), lockout(2)]))).toBe('lockout-2');
    expect(newestBusReading(visitOf([lockout(2), lockout(1)]))).toBe('lockout-1');
    expect(newestBusReading(visitOf([lockout(1), busAgain('60 V')]))).toBe('bus-again');
    expect(newestBusReading(visitOf([busAgain(), proveAgain()]))).toBe('prove-again');
    expect(newestBusReading(visitOf([lockout(3), seen()]))).toBe('lockout-3');
  });

  it('lockout is the repeated one if that holds and came later', () => {
    expect(newestLockout(visitOf([lockout(1)]), 'lockout-1')).toBe('lockout-1');
    expect(newestLockout(visitOf([lockout(1), proveAgain()]), 'lockout-1')).toBe('prove-again');
    expect(newestLockout(visitOf([proveAgain(), lockout(1)]), 'lockout-1')).toBe('lockout-1');
    expect(newestLockout(visitOf([lockout(1), proveAgain({ peProved: false })]), 'lockout-1')).toBe('lockout-1');
    expect(newestLockout(visitOf([proveAgain()]), 'lockout-1')).toBe('prove-again');
  });
});

describe('the bus can have been charged', () => {
  const since = (...later: Given[]) => chargedSince(visitOf([lockout(1), ...later]), 'lockout-1');
  const rows: [what: string, later: Given[], charged: boolean][] = [
    ['by nothing', [], false],
    ['by a look at it', [seen()], false],
    ['by the axis moved with its leads on', [mechanics('free')], true],
    ['by a stiff axis with its leads on', [mechanics('stiff')], true],
    ['not by one that was not moved', [mechanics('not-checked')], false],
    ['not by one that is held', [mechanics('held')], false],
    ['not with its leads off', [off, mechanics('free')], false],
    ['with its leads on again', [off, done('reconnect'), mechanics('free')], true],
    ['by the meter at the output stage', [off, bridgeIs(bridges.good)], true],
    ['by the meter at the braking circuit', [off, brake('20 Ω | 20 Ω | >1M | OL')], true],
    ['not by the meter at the winding', [off, windingIs(windings.alike)], false],
    ['by the tester with the leads on', [tested], true],
    ['by the tester of the parts with the leads on', [isolationIs(isolations.bothGood)], true],
    ['not by the tester with the leads off', [off, tested, isolationIs(isolations.bothGood)], false],
    ['by power', [retry('retry-leads-off', 'no-trip')], true],
    ['not by power that was not given', [retry('retry-leads-off', 'not-done')], false],
  ];
  it.each(rows)('%s', (_, later, charged) => {
    expect(since(...later)).toBe(charged);
    // What came before the reading, or with it in one answer, does not count.
    expect(chargedSince(visitOf([...later, lockout(1)]), 'lockout-1')).toBe(false);
  });

  it('not by the step that asks', () => {
    const record = visitOf([lockout(1), off, bridgeIs(bridges.good)]);
    expect(chargedSince(record, 'lockout-1', 'bridge')).toBe(false);
    expect(chargedSince(record, 'lockout-1', 'winding')).toBe(true);
    const powered = visitOf([lockout(1), retry('retry-all', 'trips')]);
    expect(chargedSince(powered, 'lockout-1', 'retry-all')).toBe(false);
    const testedRecord = visitOf([lockout(1), tested]);
    expect(chargedSince(testedRecord, 'lockout-1', 'insulation')).toBe(false);
    const moved = visitOf([lockout(1), mechanics('free')]);
    expect(chargedSince(moved, 'lockout-1', 'mechanics')).toBe(false);
  });
});

describe('a reading of the bus for a step', () => {
  const reading = (history: Given[], breakAt = 0) => busReadingFor(visitOf(history, breakAt), 'bridge');

  it('is the newest, if it is good, of this stretch, and nothing charged the bus since', () => {
    expect(reading([])).toBeUndefined();
    expect(reading([lockout(1)])).toBe('lockout-1');
    expect(reading([lockout(1), busAgain()])).toBe('bus-again');
    expect(reading([lockout(1), busAgain('60 V')])).toBeUndefined();
    expect(reading([lockout(1, { waited: false })])).toBeUndefined();
    expect(reading([lockout(1)], 1)).toBeUndefined();
    expect(reading([lockout(1), mechanics('free')])).toBeUndefined();
    expect(reading([lockout(1), bridgeIs(bridges.good)])).toBe('lockout-1');
  });
});

describe('a lockout is broken', () => {
  const broken = (...later: Given[]) => lockoutBroken(visitOf([lockout(1), ...later]), 'lockout-1');

  it('by power after it', () => {
    expect(broken(retry('retry-leads-off', 'trips'))).toEqual({ status: 'check-again' });
    expect(broken(retry('retry-leads-off', 'not-done'))).toBeUndefined();
    expect(lockoutBroken(visitOf([retry('retry-leads-off', 'trips'), lockout(1)]), 'lockout-1')).toBeUndefined();
  });

  it('by a later lockout that failed, and by none that holds', () => {
    expect(broken(lockout(2))).toBeUndefined();
    expect(broken(lockout(2, { lockedOut: false }))).toEqual({ status: 'check-again' });
    expect(broken(proveAgain({ peProved: false }))).toEqual({ status: 'check-again' });
  });

  it('not by a later reading of the bus alone, which its own step judges', () => {
    expect(broken(busAgain('60 V'))).toBeUndefined();
  });

  it('by a bus that was found charged at the output stage, which is a problem', () => {
    const charged = { status: 'problem', problem: 'bus-not-discharged' };
    expect(broken(bridgeIs(bridges.busCharged))).toEqual(charged);
    const findings = [...bridges.good.findings, ...bridges.busCharged.findings];
    expect(broken(bridgeIs({ ...bridges.good, findings }))).toEqual(charged);
    expect(broken(bridgeIs(bridges.good))).toBeUndefined();
    expect(lockoutBroken(visitOf([bridgeIs(bridges.busCharged), lockout(1)]), 'lockout-1')).toBeUndefined();
  });
});

it('only a step with power that was done has powered the drive', () => {
  const record = visitOf([retry('retry-all', 'no-trip'), retry('retry-leads-off', 'not-done'), off]);
  expect(wasPowered(record, 'retry-all')).toBe(true);
  expect(wasPowered(record, 'retry-leads-off')).toBe(false);
  expect(wasPowered(record, 'retry-stripped')).toBe(false);
  expect(wasPowered(record, 'disconnect-leads')).toBe(false);
});
