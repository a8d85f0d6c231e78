import type { Step } from '../../kernel/assessment/assessment.ts';
import { inVolts } from '../../kernel/reading/format-reading.ts';
import type { ShortWords } from '../../kernel/words/headlines.ts';
import type { FindingSentences, StepSentences } from '../../kernel/words/sentences.ts';
import type { BridgeFinding } from './rule/findings.ts';
import type { BridgeStepCode } from './rule/next-steps.ts';

// What both tests of the output stage say, in its own file, so that the page of one test does not load the words of the
// other.

type StageFinding = Extract<
  BridgeFinding,
  { code: 'bus-not-discharged' | 'bus-discharged' | 'motor-leads-not-stated' }
>;

export const busFindings: FindingSentences<StageFinding> = {
  'bus-not-discharged': ({ volts, touchVolts }) =>
    volts === undefined
      ? `Stop. The bus is not discharged: the meter is over-range. Work begins below ${inVolts(touchVolts)}.`
      : `Stop. The bus is not shown to be discharged: up to ${inVolts(volts)} is on it, and work begins below ${inVolts(touchVolts)}. No resistance is judged.`,
  'bus-discharged': () => 'The bus was measured and is discharged.',
  'motor-leads-not-stated': () =>
    'You have not said whether the motor leads are off the drive. With them on, a fault looks balanced.',
};

export const busHeadlines: ShortWords<StageFinding> = {
  'bus-not-discharged': ({ volts }) =>
    volts === undefined ? 'the bus is not discharged' : `up to ${inVolts(volts)} on the bus`,
};

export const moreThanOne = () =>
  'More than one position looks bad. One bad position of six is the usual picture: check the leads and the contacts before you believe it.';

export const stageFailed = () =>
  'The output stage has failed. The control board is very likely damaged too, so a new power module alone is not enough.';

type StageStepCode = Extract<
  BridgeStepCode,
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'state-motor-leads'
  | 'compare-known-good'
  | 'replace-complete-drive'
  | 'test-motor-and-cable'
  | 'test-insulation-next'
>;

export const stageSteps: StepSentences<Step<StageStepCode>> = {
  'measure-bus': () =>
    'Measure the DC-bus voltage on the drive, with a meter that you have just proved on a known source.',
  'wait-and-measure-bus': () =>
    'Keep away from the terminals. Make sure that the supply is locked out, wait the time on the warning label, and measure the bus again. If it stays up, find out what feeds it.',
  'state-motor-leads': () => 'Look whether the motor leads are off U, V and W at the drive, and say so above.',
  'compare-known-good': () => 'Compare with a known good axis of the same model, measured in the same way.',
  'replace-complete-drive': () => 'Replace the complete drive, not the power module alone.',
  'test-motor-and-cable': () =>
    'Test the motor and its cable before the new drive is connected. A bad motor or cable destroys the next drive too.',
  'test-insulation-next': () => 'Go on to the insulation test of motor and cable.',
};
