import type { DecisionKind, OpenItem } from '../../src/guide/decision.ts';
import type { Proof } from '../../src/guide/evidence.ts';
import type { Part } from '../../src/kernel/vocabulary.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';

/** What each visit beside this file must lead to, stated by hand from its readings, and why in a line. */
export interface Expected {
  decision?: DecisionKind;
  /** The step that an unfinished visit waits for. */
  due?: StepId;
  replace?: Partial<Record<Part, Proof[]>>;
  stay?: Part[];
  open?: OpenItem[];
  /** Answered, kept, and no longer on the way. */
  offPath?: StepId[];
  why: string;
}

export const decisions: Record<string, Expected> = {
  'drive-only': {
    decision: 'replace',
    replace: { drive: ['trips-without-motor', 'bridge-bad'] },
    stay: ['motor', 'motor-cable'],
    why: 'It trips without a motor, and DC− to V reads 3.8 Ω; motor and cable pass.',
  },
  'drive-control-fault': {
    decision: 'replace',
    replace: { drive: ['trips-without-motor'] },
    stay: ['motor', 'motor-cable'],
    why: 'All six readings agree, and it still trips with no motor on it.',
  },
  'drive-trips-without-feedback': {
    decision: 'replace',
    replace: { drive: ['trips-without-feedback', 'bridge-bad'] },
    stay: ['motor', 'motor-cable'],
    why: 'Control off, feedback off, still a trip; DC+ to W reads 12 Ω.',
  },
  'drive-and-motor': {
    decision: 'replace',
    replace: { drive: ['trips-without-motor', 'bridge-bad'], motor: ['isolation-bad'] },
    stay: ['motor-cable'],
    why: 'The motor alone reads 3 MΩ, the cable gigaohms.',
  },
  'drive-motor-and-cable': {
    decision: 'replace',
    replace: {
      drive: ['trips-without-motor', 'bridge-bad'],
      motor: ['isolation-bad'],
      'motor-cable': ['isolation-bad'],
    },
    why: 'Motor alone 26 kΩ, core U alone 90 kΩ, DC+ to U 0.6 Ω.',
  },
  'drive-and-cable': {
    decision: 'replace',
    replace: { drive: ['trips-without-motor', 'bridge-bad'], 'motor-cable': ['isolation-bad'] },
    stay: ['motor'],
    why: 'Core W alone reads 0.21 MΩ; the motor passes alone and by its winding.',
  },
  'motor-with-its-cable': {
    decision: 'replace',
    replace: { motor: ['isolation-bad'], 'motor-cable': ['isolation-bad'] },
    stay: ['drive'],
    why: 'Motor 4 kΩ, core V 60 kΩ; the drive reads good and does not trip without them.',
  },
  'motor-dead-to-frame': {
    decision: 'replace',
    replace: { motor: ['isolation-bad'] },
    stay: ['drive', 'motor-cable'],
    why: 'Motor alone 35 kΩ, cable gigaohms in both rows.',
  },
  'motor-wet': {
    decision: 'replace',
    replace: { motor: ['isolation-bad'] },
    stay: ['drive', 'motor-cable'],
    why: '12 MΩ at 20 °C is below the point after a trip; above the dew point, so it is not the weather.',
  },
  'motor-shorted-turns': {
    decision: 'replace',
    replace: { motor: ['winding-bad-at-motor'] },
    stay: ['drive', 'motor-cable'],
    why: 'W–U deviates by more than 10 % from the mean, at the motor connector too.',
  },
  'cable-chafed': {
    decision: 'replace',
    replace: { 'motor-cable': ['isolation-bad'] },
    stay: ['drive', 'motor'],
    why: 'Core U alone reads 0.42 MΩ; the motor passes alone and by its winding.',
  },
  'cable-leaks-inside': {
    decision: 'replace',
    replace: { 'motor-cable': ['isolation-bad'] },
    stay: ['drive', 'motor'],
    why: 'Only the bonded row shows core V: 1.8 MΩ to the screen.',
  },
  'cable-core-broken': {
    decision: 'replace',
    replace: { 'motor-cable': ['winding-good-without-cable'] },
    stay: ['drive', 'motor'],
    why: 'Open through the cable, 1.6 Ω at the motor; the insulation is good everywhere.',
  },
  'feedback-cable': {
    decision: 'replace',
    replace: { 'feedback-cable': ['trip-follows-feedback-cable'] },
    why: 'The trip comes with the cable alone.',
  },
  'feedback-device': {
    decision: 'replace',
    replace: { 'feedback-device': ['trip-gone-without-device'] },
    why: 'The trip stays away with the cable alone, and comes back with the device.',
  },
  'feedback-not-separated': {
    decision: 'undecided',
    open: ['feedback-cable-or-device'],
    why: 'One of the two; the second retry would tell.',
  },
  'feedback-and-motor-cable': {
    decision: 'replace',
    replace: {
      'feedback-cable': ['feedback-cable-damaged', 'trip-follows-feedback-cable'],
      'motor-cable': ['isolation-bad'],
    },
    stay: ['drive', 'motor'],
    why: 'The motor cable looks chafed, so it is tested although the feedback explains the trip.',
  },
  'protective-conductor': {
    decision: 'replace',
    replace: { 'protective-conductor': ['pe-broken'] },
    stay: ['drive', 'motor', 'motor-cable'],
    why: 'PE reads open at the drive end and short at the motor: its core is broken.',
  },
  'mechanical-stiff': {
    decision: 'mechanical',
    stay: ['drive', 'motor', 'motor-cable'],
    open: ['mechanics'],
    why: 'Every measurement passes and the axis is stiff.',
  },
  'mechanical-brake': {
    decision: 'mechanical',
    stay: ['drive', 'motor', 'motor-cable'],
    open: ['mechanics'],
    why: 'Every measurement passes and the brake drags.',
  },
  'no-fault-found': {
    decision: 'no-fault-found',
    stay: ['drive', 'motor', 'motor-cable'],
    why: 'Re-seated, everything passes, no trip.',
  },
  inconclusive: {
    decision: 'inconclusive',
    replace: { drive: ['all-passed-still-trips'] },
    stay: ['motor', 'motor-cable'],
    open: ['hidden-in-winding'],
    why: 'Everything passes, cable and motor alone too, and it trips: the drive by exclusion, once the winding is tested.',
  },
  'power-not-permitted': {
    decision: 'undecided',
    stay: ['drive', 'motor', 'motor-cable'],
    open: ['retry-not-done'],
    why: 'A fault in the drive’s control would read like this; the retries tell.',
  },
  'burnt-drive-bad-motor': {
    decision: 'replace',
    replace: { drive: ['drive-burnt', 'bridge-bad'], motor: ['isolation-bad'] },
    stay: ['motor-cable'],
    why: 'No power on a burnt drive; the motor alone reads 8 kΩ.',
  },
  'drive-wet': {
    decision: 'undecided',
    stay: ['motor', 'motor-cable'],
    open: ['damage-open'],
    why: 'A wet drive is neither condemned nor switched on.',
  },
  'bridge-too-close': {
    decision: 'undecided',
    stay: ['motor', 'motor-cable'],
    open: ['bridge-open'],
    why: '43.1 and 47.2 kΩ differ by 9.5 %, and the meter has 1 %: on either side of 10 %.',
  },
  'winding-between-limits': {
    decision: 'undecided',
    stay: ['drive', 'motor-cable'],
    open: ['winding-open'],
    why: '3.5 % from the mean: more than passes, less than fails.',
  },
  'moist-connector': {
    decision: 'undecided',
    stay: ['drive'],
    open: ['insulation-open', 'cable-open', 'motor-open'],
    why: 'Joined 4 MΩ, each part alone gigaohms: measure again.',
  },
  'motor-still-warm': {
    decision: 'undecided',
    stay: ['drive'],
    open: ['insulation-open', 'cable-open', 'motor-open'],
    why: '62 MΩ at 48 °C would be above the point at 20 °C: let it cool.',
  },
  'corrected-on-the-way': {
    decision: 'replace',
    replace: { drive: ['trips-without-motor', 'bridge-bad'] },
    stay: ['motor', 'motor-cable'],
    offPath: ['mechanics'],
    why: 'The corrected symptom leads to the retry without motor; the mechanics are kept, off the way.',
  },
  'half-done': {
    due: 'bus-again',
    why: 'The bridge passes; the bus is measured once more, then the insulation comes.',
  },
};
