import { describe, expect, it } from 'vitest';
import type { Part } from '../../../../src/kernel/vocabulary.ts';
import { explained, type OpenItem } from '../../../../src/visit/guide/open-items.ts';
import {
  bridgeIs,
  idle,
  insulationIs,
  isolationIs,
  motorWindingIs,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const parts: Part[] = [
  ...(['drive', 'motor', 'motor-cable', 'feedback-cable'] as const),
  ...(['feedback-device', 'protective-conductor', 'braking-resistor'] as const),
];

const measured: Given[] = [
  ...[trips('on-enable'), seen(), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];

describe('what the exchange of one part explains', () => {
  const none: Part[] = [];
  const feedback: Part[] = ['feedback-cable', 'feedback-device'];
  it.each<[item: OpenItem, by: Part[]]>([
    ['retry-not-done', parts],
    ['another-message', parts],
    ['not-all-taken-off', ['drive']],
    ['something-taken-off', ['drive', 'braking-resistor']],
    ['bridge-open', ['drive']],
    ['input-open', ['drive']],
    ['fuses-open', none],
    ['change-open', none],
    ['change-wrong', none],
    ['braking-open', ['braking-resistor']],
    ['cable-open', ['motor-cable']],
    ['cable-damaged', ['motor-cable']],
    ['bend-test-open', ['motor-cable']],
    ['motor-open', ['motor']],
    ['motor-damaged', ['motor']],
    ['measure-hot', ['motor']],
    ['winding-open', ['motor']],
    ['feedback-cable-or-device', feedback],
    ['feedback-device-open', feedback],
    ['feedback-contact', feedback],
    ['feedback-device-untested', none],
    ['damage-open', none],
    ['left-evidence', none],
    ['idle-cores-open', none],
    ['insulation-open', none],
    ['mechanics', none],
    ['axis-held', none],
    ['mechanics-not-checked', none],
    ['watch', none],
  ])('%s: %j', (item, by) => {
    const visit = visitOf(measured);
    expect(parts.filter((part) => explained(item, [part], visit))).toEqual(by);
    expect(explained(item, [], visit)).toBe(false);
  });

  it('that nobody looked at it, if every such part is exchanged', () => {
    const visit = visitOf([seen({ motor: 'unseen', motorCable: 'unseen' })]);
    const by = (...list: Part[]) => explained('not-looked-at', list, visit);
    expect([by('motor', 'motor-cable'), by('motor'), by('motor-cable'), by()]).toEqual([true, false, false, false]);
    const each = {
      drive: 'drive',
      motor: 'motor',
      motorCable: 'motor-cable',
      feedbackCable: 'feedback-cable',
    } as const;
    for (const [seenPart, part] of Object.entries(each)) {
      const one = visitOf([seen({ [seenPart]: 'unseen' })]);
      expect(parts.filter((other) => explained('not-looked-at', [other], one))).toEqual([part]);
    }
  });

  it('a winding that is bad through the cable, only with the cable too', () => {
    const visit = visitOf([windingIs(windings.unlike), motorWindingIs(windings.between)]);
    const by = (...list: Part[]) => explained('winding-open', list, visit);
    expect([by('motor'), by('motor-cable'), by('motor', 'motor-cable')]).toEqual([false, false, true]);
    const atMotor = visitOf([motorWindingIs(windings.between)]);
    expect(explained('winding-open', ['motor'], atMotor)).toBe(true);
  });
});

describe('a joined insulation that does not pass', () => {
  const by = (assessment: (typeof isolations)[keyof typeof isolations] | undefined, ...list: Part[]) =>
    explained('insulation-open', list, visitOf(assessment === undefined ? [] : [isolationIs(assessment)]));

  it('is explained by a part that is bad or suspect beside one that is settled', () => {
    expect(by(isolations.cableBad, 'motor-cable')).toBe(true);
    expect(by(isolations.motorBad, 'motor')).toBe(true);
    expect(by(isolations.motorSuspect)).toBe(true);
    const { parts: known } = isolations.cableBad;
    expect(by({ ...isolations.cableBad, parts: { ...known, cable: 'suspect' } })).toBe(true);
    expect(by(isolations.bothBad, 'motor', 'motor-cable')).toBe(true);
    expect(by(isolations.peBroken, 'protective-conductor')).toBe(true);
  });

  it('is not while the other part is not known, or nothing explains it', () => {
    expect(by(isolations.cableBadMotorOpen, 'motor-cable')).toBe(false);
    expect(by(isolations.motorBadCableOpen, 'motor')).toBe(false);
    expect(by(isolations.bothBad, 'motor')).toBe(false);
    expect(by(isolations.bothGood)).toBe(false);
    expect(by(isolations.contradiction, 'protective-conductor')).toBe(false);
    expect(by(undefined, 'motor')).toBe(false);
    expect(by(undefined, 'drive')).toBe(false);
  });
});
