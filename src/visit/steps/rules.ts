import { afterChangeRule } from './after-change/rule.ts';
import { bendTestRule } from './bend-test/rule.ts';
import { brakingRule } from './braking/rule.ts';
import * as feedback from './feedback/rule.ts';
import { findDriveRule } from './find-drive/rule.ts';
import { idleCoresRule } from './idle-cores/rule.ts';
import type { StepId } from './ids.ts';
import { inspectRule } from './inspect/rule.ts';
import { disconnectLeadsRule, retryLeadsOffRule } from './leads/rule.ts';
import { busAgainRule, lockoutRule } from './lockout/rule.ts';
import {
  bridgeRule,
  inputCircuitRule,
  insulationRule,
  isolationRule,
  windingMotorRule,
  windingRule,
} from './measurements/rule.ts';
import { mechanicsRule } from './mechanics/rule.ts';
import { recordingRule } from './recording/rule.ts';
import type { InsertedStepId, PlainRule, PlainStepId, Rule } from './rule.ts';
import { retryStrippedRule, stripDriveRule } from './strip-drive/rule.ts';
import { supportRule } from './support/rule.ts';
import { symptomRule } from './symptom/rule.ts';
import { connectPeRule, reconnectRule, retryAllRule } from './together/rule.ts';

type Rules = { [Id in PlainStepId]: PlainRule<Id> } & { [Id in InsertedStepId]: Rule<Id> };

/**
 * What follows each step of a visit, and what each step requires. No step names lockout or axis support as its next step:
 * the walk inserts them before every step that needs them, so that no path can leave them out.
 */
export const rules: Rules = {
  'find-drive': findDriveRule,
  symptom: symptomRule,
  recording: recordingRule,
  'lockout-1': lockoutRule,
  'lockout-2': lockoutRule,
  'lockout-3': lockoutRule,
  'prove-again': lockoutRule,
  'bus-again': busAgainRule,
  inspect: inspectRule,
  'after-change': afterChangeRule,
  'unplug-feedback': feedback.unplugFeedbackRule,
  'retry-feedback-off': feedback.retryFeedbackOffRule,
  'unplug-device-end': feedback.unplugDeviceEndRule,
  'retry-device-end': feedback.retryDeviceEndRule,
  'plug-feedback': feedback.plugFeedbackRule,
  'retry-feedback-on': feedback.retryFeedbackOnRule,
  'disconnect-leads': disconnectLeadsRule,
  'support-axis': supportRule,
  'support-again': supportRule,
  mechanics: mechanicsRule,
  bridge: bridgeRule,
  'input-circuit': inputCircuitRule,
  braking: brakingRule,
  winding: windingRule,
  'winding-motor': windingMotorRule,
  'retry-leads-off': retryLeadsOffRule,
  'strip-drive': stripDriveRule,
  'retry-stripped': retryStrippedRule,
  'bend-test': bendTestRule,
  'idle-cores': idleCoresRule,
  insulation: insulationRule,
  isolation: isolationRule,
  'connect-pe': connectPeRule,
  reconnect: reconnectRule,
  'retry-all': retryAllRule,
};

/** Whether this step proves the drive dead or the axis held, for one stretch of work only. */
export function holdsOneStretch(id: StepId): boolean {
  return rules[id].holdsOneStretch === true;
}

/** Whether this step follows from the answers before it. */
export function isPlain(id: StepId): id is PlainStepId {
  return 'next' in rules[id];
}
