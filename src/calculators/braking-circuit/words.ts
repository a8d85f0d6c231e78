import type { Step } from '../../kernel/assessment/assessment.ts';
import { inOhms } from '../../kernel/reading/format-reading.ts';
import { busBeforeFindings, busBeforeSteps } from '../../kernel/words/bus-before-reading.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import type { BrakingFinding, BrakingStepCode, ChopperPath } from './rule/input.ts';

export const pathNames: Record<ChopperPath, string> = { upper: 'B to DC+', lower: 'B to DC−' };

const partOf: Record<ChopperPath, string> = { upper: 'the freewheel diode', lower: 'the chopper transistor' };

export const brakingFindings: FindingSentences<BrakingFinding> = {
  ...figureFindings,
  ...busBeforeFindings,
  'chopper-negative': () =>
    'Stop. A reading of the diode test is below zero, so there is a voltage on the bus, whatever was measured before. The meter itself may have charged it to a few volts; only a reading in volts tells.',
  'resistor-plate-missing': () => 'The ohms of its plate are missing. Without them the resistor can’t be judged.',
  'resistor-missing': () => 'The resistor has not been measured from end to end.',
  'resistor-fits': ({ ohms, plateOhms, tolerancePercent }) =>
    `${inOhms(ohms)} from end to end, within ${percent(tolerancePercent)} of the ${inOhms(plateOhms)} of its plate.`,
  'resistor-open': () => 'The resistor reads open from end to end: broken, burnt, or a lead that is.',
  'resistor-over-range': () =>
    'The resistor is over the range of the meter, and that range may end below what its plate asks for.',
  'resistor-low': ({ ohms, plateOhms }) =>
    `${inOhms(ohms)} from end to end, far below the ${inOhms(plateOhms)} of its plate: turns shorted, another resistor, or one more beside it. It overloads the chopper.`,
  'resistor-high': ({ ohms, plateOhms }) =>
    `${inOhms(ohms)} from end to end, far above the ${inOhms(plateOhms)} of its plate: part of it or a contact is burnt, or the leads of the meter were not zeroed. The bus rises at each stop.`,
  'resistor-too-close': ({ plateOhms, tolerancePercent }) =>
    `The plate asks for ${inOhms(plateOhms)} within ${percent(tolerancePercent)}. The reading neither passes nor fails.`,
  'resistor-lead-jumps': () => 'The reading jumps while the lead is moved: the lead or its clamp makes bad contact.',
  'resistor-lead-not-stated': () =>
    'You have not said whether the reading stands still while the lead is moved. A lead that breaks in its clamp reads well at rest.',
  'housing-missing': () => 'The resistor to its housing has not been measured.',
  'housing-path': ({ leastOhms }) =>
    `The resistor reads less than ${inOhms(leastOhms)} to its housing and PE. One of its ends is always at the bus, so current goes to PE.`,
  'housing-unclear': ({ leastOhms }) => `The reading to the housing does not show ${inOhms(leastOhms)} or more.`,
  'housing-insulation-missing': () =>
    'The insulation of the resistor has not been tested. The few volts of a multimeter break nothing down.',
  'housing-insulation-bad': ({ leastOhms }) =>
    `The insulation of the resistor is below ${inOhms(leastOhms)}, the least that the machine standard asks for.`,
  'housing-insulation-unclear': ({ leastOhms }) => `The insulation test does not show ${inOhms(leastOhms)} or more.`,
  'housing-free': ({ leastOhms }) =>
    `No path to the housing by multimeter, and the insulation reads ${inOhms(leastOhms)} or more.`,
  'thermal-none': () => 'No thermal switch is fitted, as you say.',
  'thermal-closed': () => 'The thermal switch is closed while it is cool, as it should be.',
  'thermal-open': () =>
    'The thermal switch reads open while it is cool: it has tripped and wants a reset, or it or its lead is broken.',
  'thermal-unclear': () => 'The thermal switch reads neither closed nor open: long thin leads, or a burnt contact.',
  'thermal-other': () => 'This kind of thermal switch or sensor is judged by its manual.',
  'thermal-not-stated': () => 'The thermal switch of the resistor is not stated or not measured.',
  'chopper-missing': ({ path }) => `${pathNames[path]} has not been measured both ways round.`,
  'chopper-sound': ({ path }) =>
    `${pathNames[path]} conducts one way and blocks the other, as far as the meter’s few volts tell.`,
  'chopper-short': ({ path, bothWays }) =>
    bothWays
      ? `${pathNames[path]} reads a short both ways round: ${partOf[path]} is suspect.${path === 'lower' ? ' The resistor then heats as soon as power is on. DC− taken for B reads the same.' : ' The resistor still on, or DC+ taken for B, reads the same.'}`
      : `${pathNames[path]} reads a short one way round. A short is one both ways: a tip slipped, or one reading is missing.`,
  'chopper-leaky': ({ path }) =>
    `${pathNames[path]} conducts both ways round. ${path === 'lower' ? 'The transistor leaks' : 'The freewheel diode leaks'}, or something is still connected.`,
  'chopper-open': ({ path }) =>
    path === 'upper'
      ? 'B to DC+ conducts neither way. The freewheel diode is open, or this drive has none: a sound one of the same model tells.'
      : 'B to DC− conducts neither way. Many choppers have a diode there: a sound drive of the same model tells.',
  'chopper-exchanged': ({ path }) =>
    `${pathNames[path]} conducts where it should block. The leads were the wrong way round, or this terminal is not B.`,
  'chopper-unclear': ({ path }) =>
    `${pathNames[path]} neither conducts nor blocks clearly. Wait until the figure stands still.`,
};

export const brakingSteps: StepSentences<Step<BrakingStepCode>> = {
  ...figureSteps,
  ...busBeforeSteps,
  'read-resistor-plate': () =>
    'Read the ohms from the plate. For several resistors calculate how they are joined, and type the result.',
  'measure-resistor': () =>
    'Both leads off the drive, resistor cool, tips zeroed: measure from end to end, and move the lead by hand along its way while you look.',
  'note-resistor-range': () =>
    'Measure the resistor on a higher range, and type its end if it is over it too, such as > 20 kΩ.',
  'read-twice': () => 'Lift the tips, clean the place, and read again. One reading proves nothing.',
  'read-at-resistor': () =>
    'Read at the resistor’s own terminals, its lead off. Good there: the lead is suspect. The same there: the resistor is.',
  'measure-housing': () => 'Multimeter, highest range, each end to the housing and to PE. Note the range: > 20 MΩ.',
  'test-housing': () =>
    'Both leads off the drive, both ends joined: test them to the housing at the voltage that its manual asks. Never with the drive connected. Discharge afterwards.',
  'replace-resistor': () =>
    'Replace the resistor with its lead, of the same ohms and power. Find out what overheated it.',
  'look-at-thermal': () =>
    'Look in the manual how the thermal switch works, whether it wants a reset, and measure it at its own terminals, its leads off: they may carry a control voltage.',
  'measure-chopper': () =>
    'Diode test at the drive, resistor off: red on B and black on DC+, leads exchanged, red on DC− and black on B, leads exchanged. One brake terminal is DC+ itself: that is not B.',
  'compare-chopper': () =>
    'Compare with a sound drive of the same model, measured in the same way. Without one it stays undecided.',
  'replace-drive': () =>
    'Be sure that it was B. Then replace the complete drive, and test the resistor before the new one gets power: a shorted chopper has overheated it.',
};
