import type { Step } from '../../kernel/assessment/assessment.ts';
import type { Phase } from '../../kernel/electrics/phases.ts';
import { limitValue } from '../../kernel/limits.ts';
import { inOhms } from '../../kernel/reading/format-reading.ts';
import { cableEndFindings, cableEndSteps } from '../../kernel/words/cable-ends.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { peRemarkTexts } from '../../kernel/words/protective-conductor.ts';
import { type FindingSentences, listed, type StepSentences } from '../../kernel/words/sentences.ts';
import { testFindings } from '../../kernel/words/test-conditions.ts';
import { convictionFindings, convictionSteps } from './conviction-words.ts';
import { stageNames } from './part-names.ts';
import type { IsolationFinding, IsolationStepCode } from './rule/input.ts';
import type { StageName } from './rule/stage.ts';

interface OfStage {
  stage: StageName;
  phases: readonly Phase[];
}

const deadShort = () => inOhms(limitValue('pe-dead-short'));
const stage = ({ stage: name, phases }: OfStage) => `${stageNames[name]}: ${listed(phases)}`;
const plural = ({ phases }: OfStage, one: string, more: string) => (phases.length === 1 ? one : more);
const lowest = (ohms: number | undefined) => (ohms === undefined ? '' : `, the lowest ${inOhms(ohms)}`);

/** The lowest and highest value of a range; an end may be open. */
function span(lowestOhms: number | undefined, highestOhms: number | undefined): string {
  if (lowestOhms === undefined) return 'more than the readings can tell';
  const from = inOhms(lowestOhms);
  return highestOhms === undefined ? `${from} or more` : `between ${from} and ${inOhms(highestOhms)}`;
}

export const isolationFindings: FindingSentences<IsolationFinding> = {
  ...figureFindings,
  ...testFindings,
  ...cableEndFindings,
  ...convictionFindings,
  ...peRemarkTexts,
  'stage-good': (f) => `${stage(f)} ${plural(f, 'reaches', 'reach')} ${inOhms(f.limitOhms)}${lowest(f.lowestOhms)}.`,
  'stage-bad': (f) => `${stage(f)} ${plural(f, 'reads', 'read')} below ${inOhms(f.limitOhms)}${lowest(f.lowestOhms)}.`,
  'stage-incomplete': (f) => `${stage(f)} not measured yet.`,
  'stage-hot': (f) =>
    `${stage(f)} ${plural(f, 'reads', 'read')} below ${inOhms(f.limitOhms)}, maybe only because the winding is warm. Measure it again cold before you blame it.`,
  'stage-cold': (f) =>
    `${stage(f)} ${plural(f, 'reaches', 'reach')} ${inOhms(f.limitOhms)}, maybe only because the winding is cold.`,
  'stage-temperature-needed': (f) =>
    `${stage(f)} can't be judged without a winding temperature at which the correction holds.`,
  'stage-methods-differ': (f) =>
    `${stage(f)} ${plural(f, 'passes', 'pass')} or ${plural(f, 'fails', 'fail')} depending on the method of temperature correction. The verdict depends on the method, so it is undecided.`,
  'stage-length-explains': (f) =>
    `${stage(f)} ${plural(f, 'reads', 'read')} below ${inOhms(f.limitOhms)}${lowest(f.lowestOhms)}, but a sound cable of this length, material and temperature may read so. Cores of one cable read alike: one that stands out is bad, whatever the length.`,
  'stage-too-close': (f) =>
    `${stage(f)} ${plural(f, 'is', 'are')} too close to ${inOhms(f.limitOhms)} for the accuracy of your tester.`,
  'stage-bound-too-low': (f) =>
    `${stage(f)} over-range, but the range is not noted or does not reach ${inOhms(f.limitOhms)}.`,
  'stage-bound-too-high': (f) =>
    `${stage(f)} under-range: the bound does not tell on which side of ${inOhms(f.limitOhms)} it is.`,
  'joined-pe-short': () => 'Joined: PE shows continuity, as it should.',
  'joined-pe-higher-than-expected': () =>
    'Joined: PE reads more than a sound protective conductor should. Find out why before anything is powered.',
  'joined-pe-not-short': () =>
    `Joined: PE shows no continuity (it needs ${deadShort()} or less). The protective conductor is broken or makes bad contact: the motor frame can become live. This is a fault of its own.`,
  'joined-pe-suspect': () =>
    'PE was read once. Clean the contacts, zero the leads and read it again before a core is called broken.',
  'joined-pe-again-short': () =>
    'The second reading of PE shows continuity. A contact moved between the two: find it, since it opens again.',
  'joined-pe-not-proven': () => 'Joined: the PE reading is too coarse to prove a short.',
  'joined-pe-missing': () => 'Joined: PE has not been measured.',
  'motor-pe-short': () => 'Motor alone: the PE pin shows continuity to the shell, as it should.',
  'motor-pe-higher-than-expected': () =>
    'Motor alone: the PE pin reads more to the shell than a sound pin should. Clean the pin and the shell and measure again.',
  'motor-pe-not-short': () =>
    `Motor alone: the PE pin shows no continuity to the shell (it needs ${deadShort()} or less). Of U, V, W and PE only PE may, and it must. Check the pin and its screw at the motor first.`,
  'motor-pe-not-proven': () => 'Motor alone: the PE reading is too coarse to prove a short.',
  'motor-pe-missing': () => 'Motor alone: the PE pin has not been measured.',
  'motor-two-shorts': () =>
    'Motor alone: one of U, V and W reads a short to the shell too. Only PE may show continuity.',
  'motor-pins-mistaken': () =>
    'Motor alone: the only short is not at the pin that you took for PE. Check the pin order against the connector drawing.',
  'cable-pe-isolated': () => 'Cable alone: the PE core is isolated from ground, as it should be with both ends free.',
  'cable-pe-length-explains': () =>
    'Cable alone: the PE core reads below the after-trip limit, but a sound cable of this length, material and temperature may read so.',
  'cable-pe-low': () =>
    'Cable alone: the PE core reads to ground. Usually an end or the screen is still connected, and then this stage says nothing.',
  'cable-pe-low-ends-checked': () =>
    'Cable alone: the PE core reads to ground although both ends and the screen are free. The jacket may be through, or an end is wet.',
  'cable-pe-unclear': () => 'Cable alone: the reading of the PE core does not tell whether it is isolated.',
  'cable-pe-missing': () => 'Cable alone: the PE core has not been measured.',
  'bonded-row-missing': () =>
    'Cable alone: the readings with the other cores bonded to PE are missing. With both ends free, a core that leaks to the PE core, the screen or an idle core does not show against ground.',
  fit: () => 'The readings fit together: joined reads what cable and motor side by side should read.',
  'joined-too-high': (f) =>
    `Does not fit at ${f.phase}: cable and motor side by side reach at most ${inOhms(f.mostOhms)}, the error of a tester included, but joined reads ${inOhms(f.joinedOhms)}. Suspect a contact at the joined stage, moisture, or charge left from the test before.`,
  'joined-too-low': (f) =>
    `Does not fit at ${f.phase}: cable and motor side by side stay above ${inOhms(f.leastOhms)}, the error of a tester included, but joined reads ${inOhms(f.joinedOhms)}. Something that was not measured leaks: suspect moisture in the connector.`,
  'joined-needs-bonded': (f) =>
    `At ${f.phase} joined reads less than cable and motor explain. The cable may leak to its PE core or screen: read that core with the others bonded to PE.`,
  'implied-motor': (f) =>
    `From the joined and the cable readings, the motor alone would read ${span(f.lowestOhms, f.highestOhms)}.`,
  'implied-cable': (f) =>
    `From the joined and the motor readings, the cable alone would read ${span(f.lowestOhms, f.highestOhms)}.`,
  'good-joined-bad-part': () =>
    'Joined reads good, but a part of it reads bad alone, and no leak that joined can’t show explains it. The hook-up, a contact or moisture has changed in between.',
  'cores-leak-to-each-other': () =>
    'Cable alone: cores leak to each other. Only the readings with the other cores bonded to PE show it: joined, the windings connect the cores anyway.',
  'core-leaks-to-idle-core': ({ phase }) =>
    `Cable alone: core ${phase} leaks to a conductor that is at ground only when bonded to PE: an idle core, such as brake or sensor, or a neighbouring core. Joined and free rows can’t show that. With an idle core the next enable puts the bus voltage on an extra-low-voltage circuit.`,
  'bad-joined-good-parts': () =>
    'Joined reads bad, but cable and motor each pass alone. Suspect the connector between them, or two parts that are both near the limit.',
  'joined-good': () =>
    'Joined reads good, so nothing points to cable or motor. That is no go: joined can’t show a leak from core to core. The readings with the other cores bonded to PE show it, and each part is proven only alone. Nothing here speaks of the drive, nor of shorts between turns or phases.',
  'symptom-outweighs-joined': () =>
    'Joined reads good, but the symptom points to cable or motor. A fault that comes with movement or heat does not show at rest, so prove each part alone.',
  'part-not-known': () => 'Something is bad, and it is not known yet which part.',
  'also-test-other-part': () =>
    'One bad part never excuses the other. A shorted motor often takes its cable with it: prove both.',
  'cable-pe-broken-implied': () =>
    'The motor has its PE, but joined it does not arrive: the PE core of the cable or a connector is broken.',
};

export const isolationSteps: StepSentences<Step<IsolationStepCode>> = {
  ...figureSteps,
  ...cableEndSteps,
  ...convictionSteps,
  'measure-joined': () =>
    'Measure U, V and W (joined in one reading, or one by one) and PE to ground at the drive end, cable and motor joined, all leads and the PE core off the drive. With the PE core on, PE shows continuity even when it is broken.',
  'repeat-joined': () => 'Repeat the joined stage so that it can be judged: note the range, use the range that fits.',
  'state-winding-temperature': () => 'Measure the winding temperature and type it: no winding passes without it.',
  'let-motor-cool': () =>
    'Let the motor cool to room temperature and repeat its readings, a second one too. The cable alone can be tested meanwhile.',
  'let-motor-warm': () =>
    'Let the motor come to room temperature in dry air and repeat its readings, a second one too.',
  'neither-suspect': () =>
    'Cable and motor are both proven good. Go back to the symptom and the drive. Nothing here speaks of shorts between turns or phases.',
  'flex-cable': () =>
    'Test the cable in several positions: a break or leak may show in one only. Test voltage off, discharge, bend the cable and fix it so, step away, test. Never move it by hand under test voltage.',
  'measure-pe-low-range': () => 'Measure PE at the drive end to ground on the lowest resistance range of a multimeter.',
  'use-insulation-tester': () => 'Repeat with an insulation tester at the voltage of the table.',
  'state-test-voltage': () => 'Type the test voltage that was set on the insulation tester.',
  'test-cable-alone': () =>
    'Discharge, then take the cable off the motor too. Measure its U, V, W and PE to ground with both ends free.',
  'complete-cable': () => 'Complete or repeat the readings of the cable alone that can’t be judged.',
  'check-ends-free': () =>
    'Make sure that both ends of the cable and its screen are free, and repeat. If the PE core still reads, say that the ends were checked.',
  'take-bonded-row': () =>
    'Join the PE core, the screen, all idle cores and the cores that you are not measuring to ground, and measure each core once more. This finds leaks inside the cable.',
  'test-motor-alone': () =>
    'Measure the motor alone at its connector: U, V, W and PE to the shell, its brake and sensor pins joined to the shell.',
  'complete-motor': () =>
    'Complete or repeat the readings of the motor alone that can’t be judged, with the motor at room temperature.',
  'check-pin-order': () => 'Check the pin order against the connector drawing, and measure the motor alone once more.',
  'mend-motor-pe': () =>
    'Clean the PE pin of the motor and its screw, and measure it once more to bare metal of the shell.',
  'find-broken-pe': () =>
    'Find the break in the protective conductor and mend it before anything is powered: measure the PE core end to end.',
  're-measure-contradiction': () =>
    'Re-measure what does not fit: discharge everything, dry and look into the connectors, check every contact, and repeat the stages one after the other.',
  'replace-cable': () => 'Replace the cable.',
  'replace-motor': () => 'Replace the motor.',
  'replace-both': () => 'Replace motor and cable together.',
};
