import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { provenBad } from '../../../../src/visit/guide/proofs.ts';
import { suspected } from '../../../../src/visit/guide/suspicions.ts';
import {
  bend,
  brake,
  bridgeIs,
  idle,
  insulationIs,
  isolationIs,
  motorWindingIs,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from './support/answers.ts';
import { inputIs, inputs } from './support/inputs.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const proven = (history: Given[]) => provenBad(visitOf(history)).map(({ part, proofs }) => [part, ...proofs].join(' '));
const suspect = (history: Given[]) =>
  suspected(visitOf(history)).map(({ part, reasons }) => [part, ...reasons].join(' '));
const given = (when: Symptom = 'control-off'): Given[] => [trips(when), seen()];

const off = (result: 'trips' | 'no-trip') => retry('retry-feedback-off', result);
const badJoint = { ...windings.unlike, joint: 'good' as const };

describe('what proves a part bad, and what only speaks against it', () => {
  const rows: [what: string, history: Given[], proven: string[], suspect: string[]][] = [
    ['nothing', [], [], []],
    ['a drive that is burnt', [seen({ drive: 'burnt' })], [], ['drive drive-burnt']],
    ['burnt, and its readings pass', [seen({ drive: 'burnt' }), bridgeIs(bridges.good)], [], ['drive drive-burnt']],
    [
      'burnt, and its readings fail',
      [seen({ drive: 'burnt' }), bridgeIs(bridges.shortedOnce)],
      ['drive drive-burnt'],
      [],
    ],
    [
      'a wet drive whose readings fail',
      [seen({ drive: 'wet' }), bridgeIs(bridges.shortedOnce)],
      [],
      ['drive bridge-not-confirmed'],
    ],
    ['a short, twice', [bridgeIs(bridges.shorted)], ['drive bridge-bad'], []],
    ['a short, once', [bridgeIs(bridges.shortedOnce)], [], ['drive bridge-not-confirmed']],
    ['an input that is shorted, twice', [inputIs(inputs.shorted)], ['drive input-shorted'], []],
    ['the same once', [inputIs(inputs.shortedOnce)], [], ['drive input-not-confirmed']],
    ['a bus that leaks, twice', [inputIs(inputs.leaks)], [], ['drive input-not-confirmed']],
    ['a fuse only', [inputIs(inputs.fuseOnly)], [], []],
    ['a precharge out of reach', [inputIs(inputs.prechargeInside)], [], []],
    ['trips with all off', [strip(), retry('retry-stripped', 'trips')], ['drive trips-with-all-off'], []],
    ['trips with something left', [strip('some-left'), retry('retry-stripped', 'trips')], [], ['drive trips-stripped']],
    [
      'trips with all off, not every time',
      [strip(), retry('retry-stripped', 'trips', { tries: 3, trips: 2 })],
      [],
      ['drive trips-stripped'],
    ],
    [
      'trips with all off, too few tries',
      [strip(), retry('retry-stripped', 'trips', { tries: 2, trips: 2 })],
      [],
      ['drive trips-stripped'],
    ],
    [
      'trips with all off, at another stage',
      [strip(), retry('retry-stripped', 'trips', { stage: 'at-enable' })],
      [],
      ['drive trips-stripped'],
    ],
    ['trips without feedback', [off('trips')], [], ['drive trips-without-feedback']],
    ['trips without motor', [retry('retry-leads-off', 'trips')], [], ['drive trips-without-motor']],
    ['a braking switch that reads low', [brake('20 Ω | 20 Ω | >1M | 5 Ω')], [], ['drive braking-switch-low']],
    ['a braking resistor, twice', [brake('20 Ω | 60 Ω | >1M | OL')], ['braking-resistor braking-resistor-bad'], []],
    [
      'a braking resistor, once',
      [brake('20 Ω | 60 Ω | >1M | OL', false)],
      [],
      ['braking-resistor braking-resistor-read-once'],
    ],
    ['a sound braking circuit', [brake('20 Ω | 20 Ω | >1M | OL')], [], []],
    ['a motor convicted', [isolationIs(isolations.motorBad)], ['motor isolation-bad'], []],
    ['a motor suspect', [isolationIs(isolations.motorSuspect)], [], ['motor isolation-suspect']],
    ['a cable convicted', [isolationIs(isolations.cableBad)], ['motor-cable isolation-bad'], []],
    ['a winding convicted at the motor', [motorWindingIs(windings.unlike)], ['motor winding-bad-at-motor'], []],
    ['a contact at the motor', [motorWindingIs(windings.contact)], [], ['motor winding-not-confirmed']],
    ['a winding convicted through the cable', [windingIs(windings.unlike)], [], []],
    [
      'bad through the cable, good at the motor',
      [windingIs(windings.unlike), motorWindingIs(windings.alike)],
      [],
      ['motor-cable cable-or-joint'],
    ],
    [
      'the same with a sound joint',
      [windingIs(badJoint), motorWindingIs(windings.alike)],
      ['motor-cable winding-good-without-cable'],
      [],
    ],
    [
      'a sound joint, bad at the motor too',
      [windingIs(badJoint), motorWindingIs(windings.contact)],
      [],
      ['motor winding-not-confirmed'],
    ],
    [
      'a contact with a sound joint',
      [windingIs({ ...windings.contact, joint: 'good' }), motorWindingIs(windings.alike)],
      [],
      ['motor-cable cable-or-joint'],
    ],
    ['opens when bent, twice', [bend('opens')], ['motor-cable opens-when-bent'], []],
    ['leaks when bent, twice', [bend('leaks', true, 'power')], ['motor-cable opens-when-bent'], []],
    ['opens when bent, once', [bend('opens', false)], [], ['motor-cable bent-once']],
    ['a feedback core that opens, twice', [bend('opens', true, 'feedback')], ['feedback-cable opens-when-bent'], []],
    ['a feedback core that leaks, once', [bend('leaks', false, 'feedback')], [], ['feedback-cable bent-once']],
    ['a cable that stands bending', [bend('steady')], [], []],
    ['an idle core that touches', [idle('measured', '10 Ω')], [], ['motor idle-core-low', 'motor-cable idle-core-low']],
    ['PE broken, once', [insulationIs(insulations.peBroken)], [], ['protective-conductor pe-read-once']],
    [
      'PE broken, and the frame earthed otherwise',
      [isolationIs(isolations.peBroken)],
      ['protective-conductor pe-broken'],
      [],
    ],
    [
      'PE broken once, and sound separately',
      [insulationIs(insulations.peBroken), isolationIs(isolations.bothGood)],
      [],
      [],
    ],
  ];
  it.each(rows)('%s', (_, history, bad, doubted) => {
    expect(proven([...given(), ...history])).toEqual(bad);
    expect(suspect([...given(), ...history])).toEqual(doubted);
  });
});

describe('several parts', () => {
  it('are named in one order, each with all its proofs', () => {
    const history = [
      ...given(),
      isolationIs(isolations.bothBad),
      bridgeIs(bridges.shorted),
      motorWindingIs(windings.unlike),
      strip(),
      retry('retry-stripped', 'trips'),
      brake('20 Ω | 60 Ω | >1M | OL'),
      bend('opens'),
    ];
    expect(proven(history)).toEqual([
      'drive trips-with-all-off bridge-bad',
      'motor isolation-bad winding-bad-at-motor',
      'motor-cable isolation-bad opens-when-bent',
      'braking-resistor braking-resistor-bad',
    ]);
    expect(suspect(history)).toEqual([]);
  });

  it('that are proven are not suspect as well, and the others are', () => {
    const history = [
      ...given(),
      bridgeIs(bridges.shorted),
      retry('retry-leads-off', 'trips'),
      idle('measured', '10 Ω'),
    ];
    expect(proven(history)).toEqual(['drive bridge-bad']);
    expect(suspect(history)).toEqual(['motor idle-core-low', 'motor-cable idle-core-low']);
  });
});

describe('the stage at which it has to trip', () => {
  it.each<[Symptom, 'at-power' | 'at-enable' | 'moving']>([
    ['control-off', 'at-power'],
    ['on-enable', 'at-enable'],
    ['on-acceleration', 'moving'],
    ['on-braking', 'moving'],
    ['position-or-cable', 'moving'],
    ['when-hot', 'moving'],
    ['now-and-then', 'moving'],
  ])('%s: %s', (when, stage) => {
    for (const at of ['at-power', 'at-enable', 'moving'] as const) {
      const history = [...given(when), strip(), retry('retry-stripped', 'trips', { stage: at })];
      expect(proven(history)).toEqual(at === stage ? ['drive trips-with-all-off'] : []);
    }
  });

  it('is unknown without a symptom, and without how often it came', () => {
    const tried: Given[] = [strip(), retry('retry-stripped', 'trips')];
    expect(proven(tried)).toEqual([]);
    expect(proven([trips('control-off', 'no', {}), ...tried])).toEqual([]);
  });

  it('needs tries that were counted: an empty count is one', () => {
    const { tries: _tries, trips: _trips, ...uncounted } = { tries: 1, trips: 1, powerAllowed: true };
    const tried: Given[] = [strip(), ['retry-stripped', { ...uncounted, result: 'trips', stage: 'at-power' }]];
    expect(proven([...given(), ...tried])).toEqual([]);
    // A trip that came once in a million starts needs more tries than one, and one that always came needs three.
    expect(proven([trips('control-off', 'no', { came: 1, of: 1 }), ...tried])).toEqual([]);
  });
});
