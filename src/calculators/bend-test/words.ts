import type { Step } from '../../kernel/assessment/assessment.ts';
import { limit, limitValue } from '../../kernel/limits.ts';
import { formatQuantity, inOhms } from '../../kernel/reading/format-reading.ts';
import { formatLimit } from '../../kernel/words/format-limit.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, listed, type StepSentences } from '../../kernel/words/sentences.ts';
import { testFindings } from '../../kernel/words/test-conditions.ts';
import type { BendFinding, BendStepCode, BentCore, LoopId } from './rule/input.ts';

const inRow: Record<LoopId, string> = {
  ...{ UV: 'U to V', VW: 'V to W', WU: 'W to U', PE: 'PE to U' },
  ...{ screen: 'screen to U', brake: 'the brake pair', sensor: 'the sensor pair', feedback: 'the feedback pair' },
};

/** "U to V and the brake pair". */
export const loopsIn = (loops: readonly LoopId[]) => listed(loops.map((id) => inRow[id]));

const coreNames: Record<BentCore, string> = {
  ...{ U: 'core U', V: 'core V', W: 'core W', PE: 'PE', screen: 'the screen' },
  ...{ brake: 'a brake core', sensor: 'a sensor core', feedback: 'a feedback core' },
};
export const coresIn = (cores: readonly BentCore[]) => listed(cores.map((core) => coreNames[core]));

const inPositions = (places: readonly number[]) =>
  places.length === 0
    ? 'once more'
    : `in ${places.length === 1 ? 'position' : 'positions'} ${listed(places.map(String))}`;

const twoDigits = (ohms: number) => formatQuantity(Number(ohms.toPrecision(2)), 'Ω');
const noise = () => inOhms(limitValue('bend-noise'));
const jump = () => inOhms(limitValue('bend-jump'));
const which = (again: boolean) => (again ? ' in the second movement' : '');
const named = (cores: readonly BentCore[], loops: readonly LoopId[]) => {
  if (cores.length > 0) return `That is ${coresIn(cores)}: it is in each loop that jumped, and in none that stayed.`;
  return loops.length > 2
    ? 'All loops that jumped share only the joint at the far end, which may have moved.'
    : 'No single core explains it: one in two loops would show in both.';
};

export const bendFindings: FindingSentences<BendFinding> = {
  ...figureFindings,
  'test-voltage-missing': testFindings['test-voltage-missing'],
  'test-voltage-too-low': testFindings['test-voltage-too-low'],
  'bend-tester-while-moved': () =>
    'Stop. An insulation tester on a cable that is moved: the place that you look for is where the insulation is broken, and a hand is around it.',
  'bend-moved-under-voltage': () =>
    'Stop. The cable was held or moved while the test voltage was on. Voltage off, and discharge before anyone touches it.',
  'bend-end-on': () =>
    'One end is still on, so another path beside a core hides its break, and a contact or the drive may be what jumps or leaks. Nothing passes, and no part is proven.',
  'bend-end-not-stated': () => 'You have not said whether the cable is off at both ends.',
  'bend-watched-by-eye': () =>
    'Without hold, a display that is looked at shows only what lasts. What jumped counts, and nothing passes.',
  'bend-meter-not-stated': () => 'You have not said with what the loops were watched.',
  'bend-moved-once': () =>
    'Moved once only. A break shows on some bends and not on others, so a pass needs the whole way twice.',
  'bend-moved-in-part': () => 'Only a part of the cable was moved. The rest is not known.',
  'bend-moved-not-stated': () => 'You have not said what was moved.',
  'bend-screen-not-stated': () => 'You have not said whether the cable has a screen.',
  'bend-idle-not-stated': () => 'You have not said which further cores the cable has.',
  'bend-loops-missing': ({ loops }) => `Not watched yet: ${loopsIn(loops)}.`,
  'bend-loops-incomplete': ({ loops, again }) =>
    `Readings are missing${which(again)}: ${loopsIn(loops)}. Each loop needs its reading at rest before and after, the lowest and the highest.`,
  'bend-open-at-rest': ({ loops, again }) =>
    `Open at rest${which(again)}: ${loopsIn(loops)}. That is no matter of bending: the cores are not joined at the far end, or one is broken for good.`,
  'bend-tips-moved': ({ loops, again }) =>
    `The readings at rest before and after do not agree${which(again)}: ${loopsIn(loops)}. Tips or joint have moved, or a core stays as it was bent. Whatever was held in between says nothing.`,
  'bend-over-range': ({ loops, again }) =>
    `Over the range of the meter${which(again)}: ${loopsIn(loops)}. That range may end below what a quiet contact adds.`,
  'bend-contradicts': ({ loops, again }) =>
    `The held readings do not lie around those at rest${which(again)}: ${loopsIn(loops)}. Lowest and highest are exchanged, or the hold was of another loop.`,
  'bend-dips': ({ loops, again }) =>
    `Lower while moved than at rest${which(again)}: ${loopsIn(loops)}. Two cores touch on the way, or a contact was bad at rest.`,
  'bend-unclear': ({ loops, again }) =>
    `Moves by more than ${noise()}, last digit included, and not by ${jump()}${which(again)}: ${loopsIn(loops)}. Contacts or a coarse display explain that as well as strands that part.`,
  'bend-rest-odd': ({ loops, low }) =>
    low
      ? `Less at rest than half of the copper there and back: ${loopsIn(loops)}. Another path lies beside it and would hide a break, or the data are those of another cable.`
      : `More at rest than two sound cores of such a cable have: ${loopsIn(loops)}. A core or a contact is bad already: look there first.`,
  'bend-cores-uneven': ({ core }) =>
    core === undefined
      ? `The three power loops differ at rest by more than ${noise()}, and no single core explains it. A contact of the tips does.`
      : `At rest core ${core} has more than ${noise()} above the others: a contact, a crimp or broken strands.`,
  'bend-core-ohms': ({ ohms, table }) =>
    `At rest the three loops give U ${twoDigits(ohms.U)}, V ${twoDigits(ohms.V)} and W ${twoDigits(ohms.W)}${table === undefined ? '' : `; by the table a core of this length has ${twoDigits(table)} at most`}.`,
  'bend-jumps': ({ loops, again, cores }) =>
    `Jumped or opened while moved${which(again)}: ${loopsIn(loops)}. ${named(cores, loops)} One movement proves nothing: a tip that slips does the same.`,
  'bend-core-proven': ({ cores, place }) =>
    `Two movements with the tips set again in between show the same: ${coresIn(cores)} opens. ${
      place === 'half'
        ? 'Only the cable’s half of the connector was moved, so its crimp or pin is the place.'
        : 'The connectors were held still, so the place is in the cable.'
    }`,
  'bend-joint-jumps': ({ loops }) =>
    `Quiet while the connector is open, and a jump while only the plugged connector is moved: ${loopsIn(loops)}. The contact of the two halves or the motor’s half, not the cable.`,
  'bend-loops-steady': ({ loops }) => `Steady within ${noise()} while moved: ${loopsIn(loops)}.`,
  'bend-hold-misses': () =>
    `A quiet hold never says that the cable is sound when the machine runs. Usual hand meters miss interruptions shorter than about ${formatLimit(limit('bend-hold-time'))}, and a hand bends slower than the machine.`,
  'bend-feedback-not-watched': () =>
    'The feedback cable was not watched. A core of it that opens trips the drive too, and nothing here speaks of it.',
  'bend-rest-not-stated': () => 'You have not said that the cable was fixed while the test voltage was on.',
  'bend-positions-missing': ({ whole, wanted }) =>
    `The insulation is tested in ${whole === 0 ? 'no position' : `${whole} of ${wanted} positions`}. Straight says nothing of what is bare only when bent.`,
  'bend-positions-incomplete': ({ places }) => `U, V or W is missing ${inPositions(places)}.`,
  'bend-leaks': ({ cores, places, leastOhms }) =>
    `Below ${inOhms(leastOhms)} ${inPositions(places)}: ${listed(cores)}. In another position it is gone, so it comes with the bend. One reading proves nothing.`,
  'bend-leaks-everywhere': ({ cores, leastOhms }) =>
    `Below ${inOhms(leastOhms)}, and good in no position: ${listed(cores)}. That is no matter of bending alone.`,
  'bend-leak-proven': ({ cores, places }) =>
    `${listed(cores)} leaks ${inPositions(places)}, is good in another, and leaks again when bent again.`,
  'bend-insulation-low': ({ cores, places, wantedOhms }) =>
    `${inOhms(wantedOhms)} is not shown ${inPositions(places)}: ${listed(cores)}. Length, warmth and moisture may explain that, whatever the position.`,
  'bend-positions-hold': ({ whole, wantedOhms }) => `${inOhms(wantedOhms)} or more in ${whole} positions, at rest.`,
};

export const bendSteps: StepSentences<Step<BendStepCode>> = {
  ...figureSteps,
  'use-low-voltage-meter': () =>
    'Tester off, discharge, hands off the cable. While it moves, watch it with a multimeter or a milliohm meter below 25 V only.',
  'fix-before-test': () =>
    'Bend it, fix it with a strap or a block, step away, then switch the tester on. Voltage off and discharged before the next bend.',
  'free-both-ends': () =>
    'Locked out and dead: take the cable off at both ends, screen too, PE last. Join all cores at the far end with one short lead.',
  'use-hold': () => 'Use a meter with minimum and maximum hold, below 25 V, with clips, and say so above.',
  'move-whole-way': () =>
    'Start the hold, then bend the whole way by hand: clamps, chain, entries into the plugs, and each connector. Twice for each loop.',
  'say-which-cores': () =>
    'Look at the connector or in the drawing which cores and which screen the cable has, and say so above.',
  'watch-loops': () =>
    'Watch the loops that are missing in the same way. Open the joint at the far end for no loop in between.',
  'read-at-rest-twice': () =>
    'Clip on, read at rest, start the hold, move, note lowest and highest, then read at rest once more without touching the clips.',
  'clip-and-repeat': () =>
    'Clean the pins, use clips in place of tips, hold them and the joint still, and do this loop again.',
  'note-bend-range': () => 'Measure on a fixed range, and type its end if it is over it, such as > 200 Ω.',
  'join-far-end': () =>
    'Check the joint at the far end. If it is good, a core is broken at rest: measure core by core.',
  'look-at-rest-first': () => 'Measure that core at rest, end to end, with clean contacts.',
  'move-again': () =>
    'Lift the tips, join the cores again, and move a second time: first only the cable, connectors and clips held still. All three of U, V and W if one of them jumped.',
  'move-connector-only': () =>
    'To find the place, hold the cable still and move only its half of the connector, open; then plug the motor and move only the plugged connector.',
  'replace-bent-cable': () =>
    'Replace the cable end to end, with its connector. Test the motor alone, and measure the new cable before it is connected.',
  'look-into-joint': () =>
    'Open the connector: brown or loose pins, drops. Clean it, or replace both halves, and move it once more.',
  'test-in-positions': () =>
    'All other cores, the screen too, joined to PE: U, V and W one by one at 500 V, straight and bent at two places at least. Never feedback or sensor cores.',
  'set-500-volts': () => 'Set 500 V on the tester, and type it. The voltage is for power cores only.',
  'bend-once-more': () =>
    'Voltage off, discharge, lay it straight and test: gone? Bend it once more in the same way, fix it, and type the reading as the bad position once more.',
  'separate-first': () => 'Low in every position is judged by length and temperature: go on with cable or motor.',
};
