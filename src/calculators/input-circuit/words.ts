import type { Step } from '../../kernel/assessment/assessment.ts';
import { inOhms, inVolts } from '../../kernel/reading/format-reading.ts';
import { busBeforeFindings, busBeforeSteps } from '../../kernel/words/bus-before-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, listed, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import type { Diode, InputFinding, InputStepCode, Side } from './rule/input.ts';

export const sideNames: Record<Side, string> = { plus: 'DC+', minus: 'DC−' };

/** "L1 to DC+ and L2 to DC−". */
export const diodes = (some: readonly Diode[]) => listed(some.map(({ side, line }) => `${line} to ${sideNames[side]}`));

export const inputFindings: FindingSentences<InputFinding> = {
  ...figureFindings,
  ...busBeforeFindings,
  'input-negative': () =>
    'Stop. A reading of the diode test is below zero, so there is a voltage, whatever was measured before. The meter itself may have charged the bus to a few volts; only a reading in volts tells.',
  'supply-leads-connected': () =>
    'The supply leads are still on the drive. Filter, transformer and other devices read as well, so nothing is judged.',
  'supply-leads-not-stated': () => 'You have not said whether the supply leads are off the drive.',
  'others-connected': () =>
    'Braking resistor, motor leads or a neighbour are still on the bus. What reads badly may be theirs.',
  'others-not-stated': () => 'You have not said whether braking resistor, motor leads and neighbours are off the bus.',
  'fuse-open': ({ lines }) =>
    `Open: the fuse of ${listed(lines)}. It is not replaced to see: a second try into a short can burst the drive.`,
  'fuse-unclear': ({ lines, mostOhms }) =>
    `The fuse of ${listed(lines)} reads neither open nor like the tips held together, ${inOhms(mostOhms)} at most.`,
  'fuses-missing': ({ lines }) => `Not measured yet: the fuse of ${listed(lines)}.`,
  'fuses-conduct': () => 'The fuses conduct.',
  'rectifier-missing': () => 'The rectifier has not been measured whole: each line to DC+ and to DC−, both ways round.',
  'rectifier-sound': () =>
    'Each diode of the rectifier conducts one way and blocks the other, as far as the meter’s few volts tell.',
  'lines-not-judged': () =>
    'Not judged here: each line to the others and to PE. A surge arrester or a filter that is shorted inside the drive blows fuses, and all of this reads well.',
  'rectifier-short': ({ diodes: some, bothWays }) =>
    bothWays
      ? `A short both ways round: ${diodes(some)}. That blows fuses at power-on.`
      : `A short one way round: ${diodes(some)}. A short is one both ways: a tip slipped, or one reading is missing.`,
  'rectifier-leaky': ({ diodes: some }) => `Conducts both ways round: ${diodes(some)}.`,
  'rectifier-open': ({ diodes: some }) =>
    `Conducts neither way, beside others that do: ${diodes(some)}. An open diode, a tip without contact, or a controlled rectifier with its precharge on one line.`,
  'rectifier-side-open': ({ side }) =>
    `Nothing conducts to ${sideNames[side]}. A controlled rectifier or an open precharge does that as well as a break.`,
  'rectifier-uneven': ({ side, apartVolts }) =>
    `The drops to ${sideNames[side]} differ by ${inVolts(apartVolts)}. Those of like diodes hardly do: a tip or a joint with bad contact, or a precharge on one line.`,
  'rectifier-exchanged': ({ diodes: some }) =>
    `Conducts where it should block: ${diodes(some)}. The leads were the wrong way round, or two rows are exchanged.`,
  'rectifier-unclear': ({ diodes: some }) => `Neither conducts nor blocks clearly: ${diodes(some)}.`,
  'link-missing': () => 'DC+ to DC− has not been measured both ways round.',
  'link-sound': () => 'DC+ to DC− conducts through the diodes one way and blocks the other.',
  'link-one-drop': () =>
    'DC+ to DC− conducts like one diode, where two in series have about twice as much. One half of a leg or the chopper may be shorted. A diode across the bus, which some drives have, reads the same.',
  'link-short': ({ bothWays }) =>
    bothWays
      ? 'DC+ to DC− reads a short both ways round: a capacitor, both halves of a leg, or something still joined.'
      : 'DC+ to DC− reads a short one way round. A short is one both ways: a tip slipped, one reading is missing, or the bus was still climbing.',
  'link-leaky': () =>
    'DC+ to DC− conducts both ways round. A sound bus climbs to OL as the meter charges it, a large one for minutes: hold on until the figure stands still.',
  'link-open': () => 'DC+ to DC− conducts neither way. These may not be the terminals of the bus.',
  'link-exchanged': () => 'DC+ to DC− conducts where it should block. The leads were the wrong way round.',
  'link-unclear': () => 'DC+ to DC− neither conducts nor blocks clearly. Hold on until the figure stands still.',
  'link-climbs': () => 'The reading climbed: the meter charged the capacitor, so the capacitor is there.',
  'link-no-climb': () =>
    'The reading was open at once. A bus capacitor climbs, so it may be open, or a contact lies between.',
  'link-climb-not-stated': () => 'You have not said whether the reading climbed.',
  'precharge-none': () =>
    'You say that no precharge is fitted. Something limits the current into the empty bus, if only the rectifier itself, so the precharge is not judged.',
  'precharge-inside': () =>
    'The precharge is out of reach. A contact that stays shut draws a surge at each power-on and blows fuses while all else reads well.',
  'precharge-missing': () => 'The precharge resistor is not stated, or not measured beside its plate.',
  'precharge-fits': ({ ohms, plateOhms, tolerancePercent }) =>
    `The precharge has ${inOhms(ohms)}, within ${percent(tolerancePercent)} of the ${inOhms(plateOhms)} of its plate.`,
  'precharge-bypassed': () =>
    'The precharge reads like the tips held together: its contact stays shut, or the resistor is shorted. The empty bus then draws a surge at each power-on.',
  'precharge-open': () => 'The precharge reads open: the bus stays empty, and the drive stays dark.',
  'precharge-over-range': () =>
    'The precharge is over the range of the meter, and that range may end below what its plate asks for.',
  'precharge-off': ({ ohms, plateOhms }) =>
    `The precharge has ${inOhms(ohms)}, far off the ${inOhms(plateOhms)} of its plate. A thermistor that is not near 25 °C reads so too: its manual decides.`,
  'precharge-too-close': ({ plateOhms, tolerancePercent }) =>
    `The plate of the precharge asks for ${inOhms(plateOhms)} within ${percent(tolerancePercent)}. The reading neither passes nor fails.`,
};

export const inputSteps: StepSentences<Step<InputStepCode>> = {
  ...figureSteps,
  ...busBeforeSteps,
  'take-supply-leads-off': () => 'Take the supply leads off the drive, mark and cap them, and say so above.',
  'take-others-off': () =>
    'Take braking resistor, motor leads and links to neighbours off, as the manual allows, and say so above.',
  'measure-fuses': () => 'Take each fuse out of its holder, tips zeroed, and note its type and rating.',
  'fuses-last': () =>
    'Put in fuses only after the short was found: all of them, of the type and rating that the drawing gives.',
  'measure-rectifier': () =>
    'Diode test: red on each line and black on DC+, then red on DC− and black on each line. Then the same with the leads exchanged.',
  'measure-lines': () =>
    'In ohms at the drive, its supply leads off: L1, L2, L3 each to each and to PE. Compare them: one far below its fellows is suspect.',
  'measure-link': () =>
    'Diode test: red on DC−, black on DC+. Then the leads exchanged: hold on for minutes, until the figure stands still, and look whether it climbed.',
  'read-stages': () => 'Read U, V and W to DC+ and DC−, and the chopper: one that is shorted shows there.',
  'read-twice': () => 'Lift the tips, clean the place, and read again. One reading proves nothing.',
  'compare-input': () =>
    'Compare with a sound drive of the same model, measured in the same way. Without one it stays undecided.',
  'take-rest-off': () => 'Take everything else off the bus and the input, and read again: the drive alone.',
  'replace-drive': () =>
    'Replace the complete drive, or the precharge alone if only that fails and it is a part by itself. Before the new one is connected, test motor, cable and braking resistor.',
  'look-before-drive': () =>
    'Rectifier and bus read well, so look before the drive: supply leads, line filter and surge arresters by themselves, then the precharge contact and the type of the fuses.',
  'note-precharge-range': () =>
    'Measure the precharge on a higher range, and type its end if it is over it too, such as > 20 kΩ.',
  'ask-about-precharge': () =>
    'Look in the manual what limits the current into the empty bus, whether it can be reached, and what it should read. If not, no part is named.',
};
