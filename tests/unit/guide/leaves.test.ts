import { describe, expect, it } from 'vitest';
import type { DecisionKind, OpenItem } from '../../../src/guide/decision.ts';
import { nextStep } from '../../../src/guide/next-step.ts';
import type { Symptom } from '../../../src/kernel/vocabulary.ts';
import type { InspectAnswer } from '../../../src/visit/steps/inspect/question.ts';
import {
  bridgeIs,
  busAgain,
  done,
  found,
  insulationIs,
  isolationIs,
  lockout,
  looked,
  mechanics,
  motorWindingIs,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

type Seen = Partial<InspectAnswer['seen']>;

// ---- The ways to the measurements, in the words of issue 4 ----

const start = (when: Symptom, damage: Seen = {}): Given[] => [looked(), trips(when), lockout(1), seen(damage)];

/** Trips at once, control off; the feedback is unplugged and tried. */
const feedbackOff = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...start('control-off', damage),
  done('unplug-feedback'),
  retry('retry-feedback-off', result),
  ...(result === 'not-done' ? [] : [lockout(2)]),
];
const deviceEnd = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...feedbackOff('no-trip', damage),
  done('unplug-device-end'),
  retry('retry-device-end', result),
];
const pluggedAgain = (result: 'trips' | 'no-trip' | 'not-done'): Given[] => [
  ...deviceEnd('no-trip'),
  lockout(3),
  done('plug-feedback'),
  retry('retry-feedback-on', result),
];
const stillTrips = [...feedbackOff('trips'), done('disconnect-leads')];

/** Trips on enable; the motor leads are off and the enable is tried. */
const leadsOff = (result: 'trips' | 'no-trip' | 'not-done', damage: Seen = {}): Given[] => [
  ...start('on-enable', damage),
  done('disconnect-leads'),
  retry('retry-leads-off', result),
  ...(result === 'not-done' ? [] : [lockout(2)]),
];

/** Trips while it moves; the mechanics are looked at. */
const moving = (
  when: Symptom = 'on-acceleration',
  state: 'free' | 'stiff' | 'brake-drags' | 'not-checked' = 'free',
  damage: Seen = {},
): Given[] => [...start(when, damage), mechanics(state), done('disconnect-leads')];

// ---- What is measured then ----

const bridgeGood = bridgeIs(bridges.good);
const bridgeBad = bridgeIs(bridges.shorted);
const insulationGood = insulationIs(insulations.good);
const insulationBad = insulationIs(insulations.dead);
const windingGood = windingIs(windings.alike);
const allGood = [bridgeGood, insulationGood, windingGood];
const bothSeparatelyGood = isolationIs(isolations.bothGood);
const tried = (result: 'trips' | 'no-trip' | 'not-done'): Given[] => [done('reconnect'), retry('retry-all', result)];

interface Leaf {
  what: string;
  visit: Given[];
  decision: DecisionKind;
  /** Part and its proofs. */
  replace?: Record<string, string[]>;
  good?: string[];
  open?: OpenItem[];
  why: string;
}

const leaves: Record<string, Leaf[]> = {
  'trips at once, control off': [
    {
      what: 'gone with the feedback unplugged, back with its cable',
      visit: deviceEnd('trips'),
      decision: 'replace',
      replace: { 'feedback-cable': ['trip-follows-feedback-cable'] },
      why: 'The cable alone, without the device, trips it: the cable.',
    },
    {
      what: 'gone with the feedback unplugged, gone with the cable alone, back with the device',
      visit: pluggedAgain('trips'),
      decision: 'replace',
      replace: { 'feedback-device': ['trip-gone-without-device'] },
      why: 'The cable alone does not trip it, the device does.',
    },
    {
      what: 'gone with the feedback unplugged, gone with the cable alone, and not back with the device',
      visit: pluggedAgain('no-trip'),
      decision: 'undecided',
      open: ['feedback-contact'],
      why: 'Plugging it anew has mended it: a contact, and no device is replaced for it.',
    },
    {
      what: 'gone with the feedback unplugged, gone with the cable alone, the third retry not permitted',
      visit: pluggedAgain('not-done'),
      decision: 'undecided',
      open: ['feedback-device-open'],
      why: 'Device or contact: only the retry with everything plugged tells.',
    },
    {
      what: 'gone with the feedback unplugged, the second retry not permitted',
      visit: deviceEnd('not-done'),
      decision: 'undecided',
      open: ['feedback-cable-or-device'],
      why: 'One of two parts, and nothing tells which: neither is replaced.',
    },
    {
      what: 'gone with the feedback unplugged; the feedback cable is chafed, the second retry not permitted',
      visit: deviceEnd('not-done', { feedbackCable: 'chafed' }),
      decision: 'replace',
      replace: { 'feedback-cable': ['feedback-cable-damaged'] },
      open: ['feedback-device-untested'],
      why: 'It is visibly damaged, and the trip goes away without it. The device was not tried.',
    },
    {
      what: 'gone with the feedback unplugged, back with its cable; the motor cable is chafed and bad',
      visit: [
        ...deviceEnd('trips', { motorCable: 'chafed' }),
        lockout(3),
        done('disconnect-leads'),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBad),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'feedback-cable': ['trip-follows-feedback-cable'], 'motor-cable': ['isolation-bad'] },
      good: ['drive', 'motor'],
      why: 'The feedback explains the trip and not the chafed cable: both are proven.',
    },
    {
      what: 'still there without feedback; motor and cable pass',
      visit: [...stillTrips, ...allGood],
      decision: 'replace',
      replace: { drive: ['trips-without-feedback'] },
      good: ['motor', 'motor-cable'],
      why: 'Nothing is switched through to the motor with the control off: the drive. Motor and cable are tested all the same.',
    },
    {
      what: 'still there without feedback, and the bridge is bad too',
      visit: [...stillTrips, bridgeBad, insulationGood, windingGood],
      decision: 'replace',
      replace: { drive: ['trips-without-feedback', 'bridge-bad'] },
      good: ['motor', 'motor-cable'],
      why: 'Two proofs of one bad part.',
    },
    {
      what: 'still there without feedback; the motor is bad',
      visit: [...stillTrips, bridgeGood, insulationBad, isolationIs(isolations.motorBad)],
      decision: 'replace',
      replace: { drive: ['trips-without-feedback'], motor: ['isolation-bad'] },
      good: ['motor-cable'],
      why: 'The motor may have killed the drive: a new drive alone would die.',
    },
    {
      what: 'the retry without feedback is not permitted; everything measures well and the trip goes on',
      visit: [
        ...feedbackOff('not-done'),
        done('disconnect-leads'),
        ...allGood,
        done('plug-feedback'),
        ...tried('trips'),
      ],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['retry-not-done'],
      why: 'Drive or feedback: only the retry tells, so nothing is replaced.',
    },
    {
      what: 'the retry without feedback is not permitted; the bridge is bad',
      visit: [...feedbackOff('not-done'), done('disconnect-leads'), bridgeBad, insulationGood, windingGood],
      decision: 'replace',
      replace: { drive: ['bridge-bad'] },
      good: ['motor', 'motor-cable'],
      why: 'The bridge proves it without the retry.',
    },
    {
      what: 'the drive looks burnt',
      visit: [...start('control-off', { drive: 'burnt' }), done('disconnect-leads'), ...allGood],
      decision: 'replace',
      replace: { drive: ['drive-burnt'] },
      good: ['motor', 'motor-cable'],
      why: 'It is not switched on again, not even to try; what burnt it is looked for.',
    },
  ],

  'trips on enable': [
    {
      what: 'trips again with the motor leads off; motor and cable pass',
      visit: [...leadsOff('trips'), ...allGood],
      decision: 'replace',
      replace: { drive: ['trips-without-motor'] },
      good: ['motor', 'motor-cable'],
      why: 'There is no motor on it, so the drive is bad, though its bridge reads good.',
    },
    {
      what: 'trips again, the bridge is bad, the cable is bad',
      visit: [
        ...leadsOff('trips'),
        bridgeBad,
        insulationBad,
        isolationIs(isolations.cableBad),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { drive: ['trips-without-motor', 'bridge-bad'], 'motor-cable': ['isolation-bad'] },
      good: ['motor'],
      why: 'The cable is the possible cause of the dead drive.',
    },
    {
      what: 'trips again, bridge, motor and cable are bad',
      visit: [...leadsOff('trips'), bridgeBad, insulationBad, isolationIs(isolations.bothBad)],
      decision: 'replace',
      replace: {
        drive: ['trips-without-motor', 'bridge-bad'],
        motor: ['isolation-bad'],
        'motor-cable': ['isolation-bad'],
      },
      why: 'All three have their own proof.',
    },
    {
      what: 'no trip with the leads off; the motor is bad',
      visit: [...leadsOff('no-trip'), bridgeGood, insulationBad, isolationIs(isolations.motorBad)],
      decision: 'replace',
      replace: { motor: ['isolation-bad'] },
      good: ['drive', 'motor-cable'],
      why: 'The motor alone reads dead, the cable alone reads well.',
    },
    {
      what: 'no trip with the leads off; the cable is bad',
      visit: [
        ...leadsOff('no-trip'),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBad),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'motor-cable': ['isolation-bad'] },
      good: ['drive', 'motor'],
      why: 'The cable alone reads dead; the motor passes insulation and winding at its own connector.',
    },
    {
      what: 'no trip with the leads off; the cable leaks to its own screen',
      visit: [
        ...leadsOff('no-trip'),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBadInside),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'motor-cable': ['isolation-bad'] },
      good: ['drive', 'motor'],
      why: 'Only the bonded row shows it.',
    },
    {
      what: 'no trip with the leads off; motor and cable are bad',
      visit: [...leadsOff('no-trip'), bridgeGood, insulationBad, isolationIs(isolations.bothBad)],
      decision: 'replace',
      replace: { motor: ['isolation-bad'], 'motor-cable': ['isolation-bad'] },
      good: ['drive'],
      why: 'A shorted motor took its cable with it: together.',
    },
    {
      what: 'no trip with the leads off, but the bridge is bad',
      visit: [...leadsOff('no-trip'), bridgeBad, insulationGood, windingGood],
      decision: 'replace',
      replace: { drive: ['bridge-bad'] },
      good: ['motor', 'motor-cable'],
      why: 'No trip is a good sign and no proof: the bridge decides.',
    },
    {
      what: 'everything passes, no trip at the end',
      visit: [...leadsOff('no-trip'), ...allGood, ...tried('no-trip')],
      decision: 'no-fault-found',
      good: ['drive', 'motor', 'motor-cable'],
      why: 'A loose board or connector, re-seated: nothing is replaced, and the readings are the baseline.',
    },
    {
      what: 'everything passes, the trip goes on',
      visit: [...leadsOff('no-trip'), ...allGood, ...tried('trips'), lockout(3), bothSeparatelyGood],
      decision: 'inconclusive',
      replace: { drive: ['all-passed-still-trips'] },
      good: ['motor', 'motor-cable'],
      open: ['hidden-in-winding'],
      why: 'Rare: by exclusion the drive, once the winding is tested; motor and cable readings are kept.',
    },
    {
      what: 'everything passes, the trip goes on, and two cores leak to each other',
      visit: [...leadsOff('no-trip'), ...allGood, ...tried('trips'), lockout(3), isolationIs(isolations.coreToCore)],
      decision: 'replace',
      replace: { 'motor-cable': ['isolation-bad'] },
      good: ['drive', 'motor'],
      why: 'Joined can’t show it, since the windings join the cores: the bonded row of the cable alone does.',
    },
    {
      what: 'everything passes, the trip goes on, and cable and motor are not tested alone',
      visit: [
        ...leadsOff('no-trip'),
        ...allGood,
        ...tried('trips'),
        lockout(3),
        isolationIs(isolations.joinedGoodOnly, 'left open'),
      ],
      decision: 'undecided',
      good: ['drive'],
      open: ['cable-open', 'insulation-open', 'motor-open'],
      why: 'The drive is not blamed while a leak from core to core is not excluded.',
    },
    {
      what: 'the drive looks burnt; bridge and motor are bad',
      visit: [
        ...start('on-enable', { drive: 'burnt' }),
        done('disconnect-leads'),
        bridgeBad,
        insulationBad,
        isolationIs(isolations.motorBad),
      ],
      decision: 'replace',
      replace: { drive: ['drive-burnt', 'bridge-bad'], motor: ['isolation-bad'] },
      good: ['motor-cable'],
      why: 'No retry with a burnt drive, and the motor that burnt it is found.',
    },
    {
      what: 'the drive is wet; everything measures well',
      visit: [...start('on-enable', { drive: 'wet' }), done('disconnect-leads'), ...allGood],
      decision: 'undecided',
      good: ['motor', 'motor-cable'],
      open: ['damage-open'],
      why: 'Water proves nothing bad, and a wet drive is not switched on: dry it, look again.',
    },
    {
      what: 'power is not permitted; everything measures well',
      visit: [...leadsOff('not-done'), ...allGood, ...tried('not-done')],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['retry-not-done'],
      why: 'A drive with a fault in its control reads like this: the retries must be done by somebody permitted.',
    },
    {
      what: 'power is not permitted; the motor is bad',
      visit: [...leadsOff('not-done'), bridgeGood, insulationBad, isolationIs(isolations.motorBad)],
      decision: 'replace',
      replace: { motor: ['isolation-bad'] },
      good: ['drive', 'motor-cable'],
      why: 'The motor is proven without power.',
    },
  ],

  'trips while it moves': [
    {
      what: 'the axis is stiff, every measurement passes',
      visit: [...moving('on-acceleration', 'stiff'), ...allGood],
      decision: 'mechanical',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['mechanics'],
      why: 'A stiff axis draws the current of a fault; replacing a drive does not free it.',
    },
    {
      what: 'the brake drags, every measurement passes',
      visit: [...moving('when-hot', 'brake-drags'), ...allGood],
      decision: 'mechanical',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['mechanics'],
      why: 'The brake first.',
    },
    {
      what: 'the axis is stiff, and the bridge can’t be decided',
      visit: [
        ...moving('on-acceleration', 'stiff'),
        bridgeIs(bridges.tooClose, 'left open'),
        insulationGood,
        windingGood,
      ],
      decision: 'undecided',
      good: ['motor', 'motor-cable'],
      open: ['bridge-open', 'mechanics'],
      why: 'It is called mechanical only when every measurement passes.',
    },
    {
      what: 'the axis is stiff, and the motor is bad',
      visit: [...moving('on-acceleration', 'stiff'), bridgeGood, insulationBad, isolationIs(isolations.motorBad)],
      decision: 'replace',
      replace: { motor: ['isolation-bad'] },
      good: ['drive', 'motor-cable'],
      open: ['mechanics'],
      why: 'The motor is proven bad, and the mechanics stay to be mended.',
    },
    {
      what: 'the mechanics could not be checked, everything else passes, no trip',
      visit: [...moving('now-and-then', 'not-checked'), ...allGood, ...tried('no-trip')],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['mechanics-not-checked'],
      why: 'One usual cause has not been looked at.',
    },
    {
      what: 'when the cable moves: joined reads well, the cable alone is bad in its bonded row',
      visit: [
        ...moving('position-or-cable'),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBadInside),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'motor-cable': ['isolation-bad'] },
      good: ['drive', 'motor'],
      why: 'The symptom points at the cable, and its own readings prove it.',
    },
    {
      what: 'when the cable moves: both parts pass alone, the trip goes on',
      visit: [
        ...moving('position-or-cable'),
        bridgeGood,
        insulationGood,
        bothSeparatelyGood,
        windingGood,
        ...tried('trips'),
      ],
      decision: 'inconclusive',
      replace: { drive: ['all-passed-still-trips'] },
      good: ['motor', 'motor-cable'],
      open: ['hidden-in-winding'],
      why: 'Nothing is left but the drive and what hides in the winding; the cable was proven alone, not only joined.',
    },
    {
      what: 'when the cable moves: a core is broken, which insulation does not show',
      visit: [
        ...moving('position-or-cable'),
        bridgeGood,
        insulationGood,
        bothSeparatelyGood,
        windingIs(windings.open),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'motor-cable': ['winding-good-without-cable'] },
      good: ['drive', 'motor'],
      why: 'Open through the cable, sound at the motor.',
    },
    {
      what: 'a winding that is bad at the motor too',
      visit: [
        ...moving('when-hot'),
        bridgeGood,
        insulationGood,
        windingIs(windings.unlike),
        motorWindingIs(windings.unlike),
      ],
      decision: 'replace',
      replace: { motor: ['winding-bad-at-motor'] },
      good: ['drive', 'motor-cable'],
      why: 'Shorted turns: the same without the cable.',
    },
    {
      what: 'the motor cable is bad, and the winding at the motor as well',
      visit: [
        ...moving('when-hot'),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBad),
        motorWindingIs(windings.unlike),
      ],
      decision: 'replace',
      replace: { motor: ['winding-bad-at-motor'], 'motor-cable': ['isolation-bad'] },
      good: ['drive'],
      why: 'Each by its own measurement.',
    },
    {
      what: 'the motor looks burnt, and reads well joined and alone',
      visit: [
        ...moving('when-hot', 'free', { motor: 'burnt' }),
        bridgeGood,
        insulationGood,
        bothSeparatelyGood,
        windingGood,
      ],
      decision: 'undecided',
      good: ['drive', 'motor-cable'],
      open: ['motor-damaged'],
      why: 'No reading makes burnt parts sound: it is not switched on, and what was seen is named.',
    },
    {
      what: 'the feedback cable is chafed, everything measures well',
      visit: [...moving('now-and-then', 'free', { feedbackCable: 'chafed' }), ...allGood],
      decision: 'replace',
      replace: { 'feedback-cable': ['feedback-cable-damaged'] },
      good: ['drive', 'motor', 'motor-cable'],
      why: 'It is damaged for everyone to see, and nothing is tried before it is replaced.',
    },
    {
      what: 'the feedback cable is wet, everything measures well',
      visit: [...moving('now-and-then', 'free', { feedbackCable: 'wet' }), ...allGood],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['damage-open'],
      why: 'It is dried and looked at again, not thrown away.',
    },
  ],

  'the protective conductor': [
    {
      what: 'is broken in the cable: everything else passes',
      visit: [
        ...moving(),
        bridgeGood,
        insulationIs(insulations.peBroken),
        isolationIs(isolations.peBroken),
        windingGood,
      ],
      decision: 'replace',
      replace: { 'protective-conductor': ['pe-broken'] },
      good: ['drive', 'motor', 'motor-cable'],
      why: 'The frame can become live: a fault of its own, and nothing is powered.',
    },
    {
      what: 'is broken in the motor',
      visit: [...moving(), bridgeGood, insulationIs(insulations.peBroken), isolationIs(isolations.motorPeBroken)],
      decision: 'replace',
      replace: { motor: ['isolation-bad'], 'protective-conductor': ['pe-broken'] },
      good: ['drive', 'motor-cable'],
      why: 'The motor alone has no dead short between PE pin and shell.',
    },
    {
      what: 'read open in the insulation test and sound at the isolation',
      visit: [...moving(), bridgeGood, insulationIs(insulations.peBroken), bothSeparatelyGood, windingGood],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['insulation-open'],
      why: 'The two contradict each other: the insulation test is repeated, nothing is replaced.',
    },
  ],

  'what is left open': [
    {
      what: 'the bridge is too close to call',
      visit: [...moving(), bridgeIs(bridges.tooClose, 'left open'), insulationGood, windingGood],
      decision: 'undecided',
      good: ['motor', 'motor-cable'],
      open: ['bridge-open'],
      why: 'A drive in doubt gets no power and no verdict.',
    },
    {
      what: 'the insulation lacks its temperature, and the parts are not separated',
      visit: [
        ...moving(),
        bridgeGood,
        insulationIs(insulations.noTemperature, 'left open'),
        isolationIs(isolations.nothingSeparated, 'left open'),
        windingGood,
      ],
      decision: 'undecided',
      good: ['drive'],
      open: ['insulation-open', 'cable-open', 'motor-open'],
      why: 'Neither part is known.',
    },
    {
      what: 'a warm winding that reads low, both parts pass alone',
      visit: [...moving(), bridgeGood, insulationIs(insulations.warm, 'left open'), bothSeparatelyGood, windingGood],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['insulation-open'],
      why: 'The joined test never passed; it is repeated before power, and not condemned hot.',
    },
    {
      what: 'joined reads bad, each part alone reads well',
      visit: [...moving(), bridgeGood, insulationBad, isolationIs(isolations.contradiction, 'left open'), windingGood],
      decision: 'undecided',
      good: ['drive'],
      open: ['insulation-open', 'cable-open', 'motor-open'],
      why: 'The connector between them, or moisture: measure again, replace nothing.',
    },
    {
      what: 'the first insulation reading failed, the second one joined passes',
      visit: [...moving(), bridgeGood, insulationBad, isolationIs(isolations.joinedGoodOnly, 'left open'), windingGood],
      decision: 'undecided',
      good: ['drive'],
      open: ['insulation-open'],
      why: 'Two joined readings contradict each other.',
    },
    {
      what: 'the cable is bad, the motor could not be tested alone',
      visit: [
        ...moving(),
        bridgeGood,
        insulationBad,
        isolationIs(isolations.cableBadMotorOpen, 'left open'),
        motorWindingIs(windings.alike),
      ],
      decision: 'replace',
      replace: { 'motor-cable': ['isolation-bad'] },
      good: ['drive'],
      open: ['insulation-open', 'motor-open'],
      why: 'One bad part never excuses the other: the motor stays open.',
    },
    {
      what: 'the motor is bad, the cable could not be tested alone',
      visit: [...moving(), bridgeGood, insulationBad, isolationIs(isolations.motorBadCableOpen, 'left open')],
      decision: 'replace',
      replace: { motor: ['isolation-bad'] },
      good: ['drive'],
      open: ['insulation-open', 'cable-open'],
      why: 'A shorted motor often takes its cable with it: the cable stays open.',
    },
    {
      what: 'the drive trips without its motor, and the insulation was left open',
      visit: [
        ...leadsOff('trips'),
        bridgeGood,
        insulationIs(insulations.noTemperature, 'left open'),
        isolationIs(isolations.nothingSeparated, 'left open'),
        windingGood,
      ],
      decision: 'replace',
      replace: { drive: ['trips-without-motor'] },
      open: ['insulation-open', 'cable-open', 'motor-open'],
      why: 'The drive is bad whatever the motor is; what may have killed it is still open.',
    },
    {
      what: 'the winding is between the limits',
      visit: [...moving(), bridgeGood, insulationGood, windingIs(windings.between, 'left open')],
      decision: 'undecided',
      good: ['drive', 'motor-cable'],
      open: ['winding-open'],
      why: 'Shorted turns are not excluded: surge test or a sound motor of the same model.',
    },
    {
      what: 'the winding is open through the cable, and was not measured at the motor',
      visit: [
        ...moving(),
        bridgeGood,
        insulationGood,
        windingIs(windings.open),
        motorWindingIs(windings.incomplete, 'left open'),
      ],
      decision: 'undecided',
      good: ['drive'],
      open: ['winding-open'],
      why: 'Motor or cable, and nothing tells which: neither is good and neither is replaced.',
    },
    {
      what: 'the last retry is not permitted',
      visit: [...moving(), ...allGood, ...tried('not-done')],
      decision: 'undecided',
      good: ['drive', 'motor', 'motor-cable'],
      open: ['retry-not-done'],
      why: 'Nobody knows whether the trip is gone.',
    },
  ],
};

describe.each(Object.entries(leaves))('%s', (_, cases) => {
  it.each(cases)('$what: $decision', ({ visit, decision, replace = {}, good = [], open = [], why }) => {
    const state = nextStep(visitOf(visit));
    expect(state.due, why).toBeUndefined();
    const { decision: given } = state;
    expect(given?.kind, why).toBe(decision);
    expect(Object.fromEntries(given?.replace.map(({ part, proofs }) => [part, proofs]) ?? []), why).toEqual(replace);
    expect([...(given?.good ?? [])].sort(), why).toEqual([...good].sort());
    expect([...(given?.open ?? [])].sort(), why).toEqual([...open].sort());
    expect(state.offPath, 'every answer of a leaf is on its way').toEqual([]);
  });
});

describe('finding the drive', () => {
  const due = (first: Given) => {
    const { due: id, path } = nextStep(visitOf([first]));
    return `${id} ${path.at(-1)?.problem ?? ''}`.trim();
  };

  it.each<[what: string, first: Given, then: string]>([
    ['axis 1 of 2', looked(2, 1), 'symptom'],
    ['axis 2 of 2', looked(2, 2), 'symptom'],
    ['axis 3 of a drive with 2: misread, or another drive’s', looked(2, 3), 'find-drive indication-contradicts'],
    ['axis 2 of a drive with 1', looked(1, 2), 'find-drive indication-contradicts'],
    ['looking is not permitted: found from the drawings', found('not-permitted'), 'symptom'],
    ['known from an earlier record', found('known'), 'symptom'],
    [
      'an earlier record that names an axis too many is wrong as well',
      ['find-drive', { observation: 'known', axesOnDrive: 2, indicatedAxis: 3 }],
      'find-drive indication-contradicts',
    ],
  ])('%s: %s', (_, first, then) => {
    expect(due(first)).toBe(then);
  });
});

describe('which branch a symptom takes', () => {
  it.each<[Symptom, Seen, string]>([
    ['control-off', {}, 'unplug-feedback'],
    ['on-enable', {}, 'disconnect-leads'],
    ['on-acceleration', {}, 'mechanics'],
    ['position-or-cable', {}, 'mechanics'],
    ['when-hot', {}, 'mechanics'],
    ['now-and-then', {}, 'mechanics'],
    ['control-off', { drive: 'burnt' }, 'disconnect-leads'],
    ['control-off', { drive: 'wet' }, 'disconnect-leads'],
    ['on-enable', { drive: 'chafed' }, 'disconnect-leads'],
  ])('%s, seen %o: then %s', (when, damage, then) => {
    expect(nextStep(visitOf(start(when, damage))).due).toBe(then);
  });

  it('on enable with a sound drive the leads are off before the retry; with a damaged one there is no retry', () => {
    const after = (damage: Seen) => nextStep(visitOf([...start('on-enable', damage), done('disconnect-leads')])).due;
    expect(after({})).toBe('retry-leads-off');
    expect(after({ drive: 'burnt' })).toBe('bridge');
    expect(after({ drive: 'wet' })).toBe('bridge');
  });

  it.each<[what: string, visit: Given[], then: string]>([
    ['a good joined reading is enough where nothing points at cable or motor', moving(), 'winding'],
    ['not when the cable moves', moving('position-or-cable'), 'isolation'],
    ['not when the cable looks chafed', moving('when-hot', 'free', { motorCable: 'chafed' }), 'isolation'],
    ['not when the motor looks burnt', moving('when-hot', 'free', { motor: 'burnt' }), 'isolation'],
    ['nor wet', moving('when-hot', 'free', { motor: 'wet' }), 'isolation'],
  ])('%s', (_, visit, then) => {
    expect(nextStep(visitOf([...visit, bridgeGood, busAgain(), insulationGood])).due).toBe(then);
  });

  it('where something points at the cable, the isolation stops short of nothing but both parts alone', () => {
    const suspect = [...moving('position-or-cable'), bridgeGood, busAgain(), insulationGood];
    expect(nextStep(visitOf([...suspect, isolationIs(isolations.joinedGoodOnly)])).due).toBe('isolation');
    expect(nextStep(visitOf([...suspect, bothSeparatelyGood])).due).toBe('winding');
  });
});
