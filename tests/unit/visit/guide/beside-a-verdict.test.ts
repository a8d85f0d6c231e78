import { describe, expect, it } from 'vitest';
import { decide } from '../../../../src/visit/guide/decision.ts';
import { motorSideSpeaksAgainst, powerRefused } from '../../../../src/visit/guide/power.ts';
import { provenBad } from '../../../../src/visit/guide/proofs.ts';
import { afterMeasuring, measureAfter } from '../../../../src/visit/guide/routes.ts';
import { suspected } from '../../../../src/visit/guide/suspicions.ts';
import {
  bend,
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  mechanics,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const good: Given[] = [
  ...[trips('on-enable'), seen(), done('disconnect-leads'), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];
const { bothGood, cableBad } = isolations;
type Status = (typeof bothGood)['parts']['cable'];
/** Both parts were found good, and one is said to be otherwise. */
const but = (part: 'cable' | 'motor', status: Status) =>
  isolationIs({ ...bothGood, parts: { ...bothGood.parts, [part]: status } });
const decided = (way: Given[], record = way) => decide(visitOf(way), visitOf(record));

describe('what is said of the parts beside the verdict of the isolation', () => {
  const after = (...more: Given[]) => afterMeasuring(visitOf([...good, ...more]), visitOf([...good, ...more]));

  it('counts: nothing is connected while one is bad, suspect or open, or the verdict is no go', () => {
    expect(after(isolationIs(bothGood))).toBe('reconnect');
    for (const part of ['cable', 'motor'] as const)
      for (const status of ['undecided', 'not-tested', 'suspect', 'proven-bad'] as const)
        expect(after(but(part, status))).toBe('decide');
    expect(after(isolationIs({ ...bothGood, verdict: 'undecided' }))).toBe('decide');
  });

  it('speaks against power at the motor', () => {
    expect(motorSideSpeaksAgainst(visitOf([isolationIs(bothGood)]))).toBe(false);
    for (const part of ['cable', 'motor'] as const)
      for (const status of ['suspect', 'proven-bad'] as const) {
        const visit = visitOf([...good, but(part, status)]);
        expect(motorSideSpeaksAgainst(visit)).toBe(true);
        expect(powerRefused(visit, 'retry-all')).toBe(true);
      }
  });

  it('makes a cable suspect', () => {
    const parts = { ...cableBad.parts, cable: 'suspect' as const };
    expect(suspected(visitOf([isolationIs({ ...cableBad, parts })]))).toEqual([
      { part: 'motor-cable', reasons: ['isolation-suspect'] },
    ]);
  });
});

describe('records of the older order', () => {
  const after = (id: Parameters<typeof measureAfter>[0], way: Given[], record = way) =>
    measureAfter(id, visitOf(way), visitOf(record));

  it('have a winding measured that they measured, though the motor is bad', () => {
    const bad = [trips('on-acceleration'), isolationIs(isolations.motorBad)];
    expect(after('bridge', bad)).toBe('idle-cores');
    expect(after('bridge', bad, [...bad, windingIs(windings.alike)])).toBe('winding');
  });

  it('are not asked twice for their enable without motor', () => {
    const older = [trips('on-enable'), retry('retry-leads-off', 'trips')];
    expect(after('winding', older)).toBe('strip-drive');
    expect(after('winding', [trips('on-enable'), retry('retry-leads-off', 'no-trip')])).toBe('idle-cores');
  });

  it('that tripped as a whole without an isolation are asked for none on a way that tries once more', () => {
    expect(after('insulation', good, [...good, retry('retry-all', 'trips')])).toBe('reconnect');
  });
});

describe('a decision', () => {
  it('leaves out what the exchange of a part explains', () => {
    const tried = retry('retry-leads-off', 'not-done');
    expect(decided([...good, tried]).open).toEqual(['retry-not-done']);
    expect(decided([...good, bridgeIs(bridges.shorted), tried]).open).toEqual([]);
  });

  it('names what only the record has against a trial of the whole axis', () => {
    const way: Given[] = [...good, done('reconnect'), retry('retry-all', 'no-trip')];
    expect(decided(way, [...way, mechanics('stiff')]).open).toEqual(['left-evidence']);
    expect(decided(way, [...way, bend('opens', false)]).open).toEqual(['left-evidence']);
  });

  it('is not mechanical while the record has something else against power', () => {
    const stiff = [...good, mechanics('stiff')];
    expect(decided(stiff).kind).toBe('mechanical');
    const left = decided(stiff, [...stiff, retry('retry-leads-off', 'trips')]);
    expect([left.kind, left.open]).toEqual(['undecided', ['mechanics', 'left-evidence']]);
  });

  it('excludes no part that is suspect, though it trips without it', () => {
    const way = [...good, retry('retry-leads-off', 'trips'), isolationIs(isolations.motorSuspect)];
    expect(decided(way).excluded.map(({ part }) => part)).toEqual(['motor-cable', 'protective-conductor']);
  });
});

describe('feedback', () => {
  const off: Given[] = [trips('control-off'), seen(), retry('retry-feedback-off', 'no-trip')];
  const device = (result: 'trips' | 'no-trip', other = {}) => retry('retry-device-end', result, other);
  const back = (result: 'trips' | 'no-trip') => retry('retry-feedback-on', result);
  const found = (...more: Given[]) => {
    const visit = visitOf([...off, ...more]);
    const bad = provenBad(visit).map(({ part }) => part);
    return [bad, suspected(visit).map(({ part, reasons }) => [part, ...reasons].join(' '))];
  };
  const chafed = seen({ feedbackCable: 'chafed' });
  const bent = bend('opens', false, 'feedback');

  it.each<[what: string, given: Given[], proven: string[], suspect: string[]]>([
    ['gone', [], [], ['feedback-cable gone-without-feedback', 'feedback-device gone-without-feedback']],
    ['back with the cable', [device('trips')], ['feedback-cable'], []],
    [
      'back with it, not every time',
      [device('trips', { trips: 1 })],
      [],
      ['feedback-cable gone-without-feedback follows-feedback-cable'],
    ],
    ['gone without the device', [device('no-trip')], [], ['feedback-device gone-without-feedback gone-without-device']],
    ['and back with it', [device('no-trip'), back('trips')], ['feedback-device'], []],
    ['and not back: a contact', [device('no-trip'), back('no-trip')], [], []],
    [
      'a contact, and the cable is chafed',
      [chafed, device('no-trip'), back('no-trip')],
      [],
      ['feedback-cable feedback-cable-damaged'],
    ],
    [
      'the device, and the cable is chafed',
      [chafed, device('no-trip'), back('trips')],
      ['feedback-device'],
      ['feedback-cable feedback-cable-damaged'],
    ],
    [
      'a contact, and a core that opened once',
      [bent, device('no-trip'), back('no-trip')],
      [],
      ['feedback-cable bent-once'],
    ],
    [
      'the device, and a core that opened once',
      [bent, device('no-trip'), back('trips')],
      ['feedback-device'],
      ['feedback-cable bent-once'],
    ],
  ])('%s', (_, given, proven, doubted) => {
    expect(found(...given)).toEqual([proven, doubted]);
  });

  it('another part that is proven settles nothing of it', () => {
    expect(found(bridgeIs(bridges.shorted))).toEqual([
      ['drive'],
      ['feedback-cable gone-without-feedback', 'feedback-device gone-without-feedback'],
    ]);
  });
});
