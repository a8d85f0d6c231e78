import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { LockoutAnswer } from '../../../../../src/visit/steps/lockout/question.ts';
import type { Given } from './visit.ts';

/**
 * The state of the machine after a history of answers, worked out from the rules of safe work and not from the guide:
 * what is dangerous follows from the order of events alone, not from the guide's path.
 */
export interface Machine {
  /** Locked out and every point measured low, since the last power and in this stretch of work. */
  dead: boolean;
  /** It was proved dead at least once since the last break, so that what was changed meanwhile has been seen. */
  seenSinceBreak: boolean;
  /** What can have charged the bus since it was last measured low. */
  chargedBy: Set<StepId>;
  mayFall: boolean;
  supported: boolean;
  /** The feedback connectors of this axis are plugged in at both ends. */
  feedbackIn: boolean;
  /** U, V and W are on the drive. */
  leadsOn: boolean;
  /** The PE core is on the drive. */
  peOn: boolean;
  /** The cores of brake and sensor are at their terminals, not off and not on PE. */
  idleCoresBack: boolean;
  /** Everything was taken off the drive, as far as the manual allows. */
  stripped: boolean;
}

export const touching: ReadonlySet<StepId> = new Set<StepId>([
  'inspect',
  'after-change',
  'unplug-feedback',
  'unplug-device-end',
  'plug-feedback',
  'mechanics',
  'disconnect-leads',
  'bridge',
  'input-circuit',
  'braking',
  'strip-drive',
  'bend-test',
  'idle-cores',
  'insulation',
  'isolation',
  'winding',
  'winding-motor',
  'connect-pe',
  'reconnect',
]);
export const powering: ReadonlySet<StepId> = new Set<StepId>([
  'retry-feedback-off',
  'retry-device-end',
  'retry-feedback-on',
  'retry-leads-off',
  'retry-stripped',
  'retry-all',
]);

/** The touch voltage of the regulation (29 CFR 1910.333), repeated on purpose: the checker must be independent. */
const touchVoltage = 50;

const isLow = (reading: Reading) => reading.kind === 'value' && Math.abs(reading.value) < touchVoltage;

function isDead(answer: LockoutAnswer): boolean {
  const { lockedOut, waited, meterProved, peProved, supplyVoltage, outputVoltage, busVoltage } = answer;
  return lockedOut && waited && meterProved && peProved && [supplyVoltage, outputVoltage, busVoltage].every(isLow);
}

/** `breakAt`: how many of the answers were given before the last break of the work; nobody knows what happened in it. */
export function machineAfter(history: readonly Given[], breakAt = 0): Machine {
  const machine: Machine = {
    dead: false,
    seenSinceBreak: false,
    chargedBy: new Set(),
    mayFall: true,
    supported: false,
    feedbackIn: true,
    leadsOn: true,
    peOn: true,
    idleCoresBack: true,
    stripped: false,
  };
  history.forEach((given, index) => {
    if (index === breakAt) afterBreak(machine);
    happens(machine, given);
  });
  if (history.length === breakAt) afterBreak(machine);
  return machine;
}

function afterBreak(machine: Machine): void {
  machine.dead = false;
  machine.seenSinceBreak = false;
  machine.supported = false;
}

function happens(machine: Machine, [id, answer]: Given): void {
  switch (id) {
    case 'lockout-1':
    case 'lockout-2':
    case 'lockout-3':
    case 'prove-again':
      machine.dead = isDead(answer);
      machine.seenSinceBreak ||= machine.dead;
      if (machine.dead) machine.chargedBy.clear();
      break;
    case 'bus-again':
      if (answer.meterProved && isLow(answer.busVoltage)) machine.chargedBy.clear();
      else machine.chargedBy.add(id);
      break;
    case 'symptom':
      machine.mayFall = answer.gravityLoaded !== 'no';
      break;
    case 'support-axis':
    case 'support-again':
      machine.supported = answer.done;
      break;
    case 'unplug-feedback':
    case 'unplug-device-end':
      if (answer.done) machine.feedbackIn = false;
      break;
    case 'plug-feedback':
      if (answer.done) machine.feedbackIn = true;
      break;
    case 'mechanics':
      if (answer.found !== 'not-checked' && answer.found !== 'held' && machine.leadsOn) machine.chargedBy.add(id);
      break;
    case 'disconnect-leads':
      machine.leadsOn = !answer.done;
      break;
    case 'connect-pe':
      if (answer.done) machine.peOn = true;
      break;
    case 'reconnect':
      if (answer.done) machine.leadsOn = true;
      if (answer.done) {
        machine.peOn = true;
        machine.idleCoresBack = true;
        machine.stripped = false;
      }
      break;
    case 'strip-drive':
      machine.stripped = answer.state !== 'not-allowed';
      if (machine.stripped) machine.feedbackIn = false;
      if (machine.stripped) machine.idleCoresBack = false;
      break;
    case 'idle-cores':
      if (answer.cores === 'measured') machine.idleCoresBack = false;
      break;
    case 'braking':
      // A meter at the brake terminals charges the bus as it does at the output stage.
      machine.chargedBy.add(id);
      break;
    case 'bridge':
    case 'input-circuit':
      machine.chargedBy.add(id);
      // A bus that is found charged means that the lockout does not hold.
      if (answer.assessment.findings.some(({ severity }) => severity === 'stop')) machine.dead = false;
      break;
    case 'insulation':
    case 'isolation':
      machine.peOn = false;
      machine.idleCoresBack = false;
      if (machine.leadsOn) machine.chargedBy.add(id);
      break;
    default:
      if (powering.has(id) && 'result' in answer && answer.result !== 'not-done') machine.dead = false;
  }
}
