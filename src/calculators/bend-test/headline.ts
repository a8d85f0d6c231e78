import { inOhms } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom, testVoltageFound } from '../../kernel/words/headlines.ts';
import { capital, listed } from '../../kernel/words/sentences.ts';
import type { BendAssessment, BendFinding } from './rule/input.ts';
import { coresIn, loopsIn } from './words.ts';

const words: HeadlineWords<BendFinding> = {
  found: {
    ...figureHeadline,
    'bend-tester-while-moved': () => 'a test voltage on a cable that is moved',
    'bend-moved-under-voltage': () => 'the cable was moved while the test voltage was on',
    'bend-core-proven': ({ cores }) => `${coresIn(cores)} opens when bent, twice`,
    'bend-leak-proven': ({ cores }) => `${listed(cores)} leaks when bent, twice`,
    'bend-jumps': ({ loops, cores, again }) =>
      `${cores.length > 0 ? coresIn(cores) : loopsIn(loops)} jumped ${again ? 'in the second movement' : 'once'} while bent`,
    'bend-leaks': ({ cores }) => `${listed(cores)} leaks in one position, not proven yet`,
    'bend-joint-jumps': () => 'the plugged connector jumps, the open cable does not',
    'bend-open-at-rest': ({ loops }) => `open at rest: ${loopsIn(loops)}`,
    'bend-leaks-everywhere': ({ cores, leastOhms }) =>
      `${listed(cores)} below ${inOhms(leastOhms)} in no position good`,
    'bend-tips-moved': ({ loops }) => `before and after do not agree: ${loopsIn(loops)}`,
    'bend-contradicts': ({ loops }) => `what was held does not fit: ${loopsIn(loops)}`,
    'bend-unclear': ({ loops }) => `more than contacts, less than a break: ${loopsIn(loops)}`,
    'bend-dips': ({ loops }) => `lower while moved than at rest: ${loopsIn(loops)}`,
    'bend-rest-odd': ({ loops }) => `no loop of two sound cores at rest: ${loopsIn(loops)}`,
    'bend-cores-uneven': () => 'the three loops are not alike at rest',
    'bend-over-range': () => 'over a range that a quiet contact may exceed too',
    'bend-insulation-low': ({ cores }) => `the insulation of ${listed(cores)} is not shown to be good`,
    ...testVoltageFound,
    'bend-end-on': () => 'one end is still on',
    'bend-watched-by-eye': () => 'by eye nothing passes',
    'bend-moved-in-part': () => 'only a part was moved',
    'bend-moved-once': () => 'moved once only',
  },
  missing: {
    'bend-end-not-stated': () => 'whether both ends are off',
    'bend-meter-not-stated': () => 'with what it was watched',
    'bend-moved-not-stated': () => 'what was moved',
    'bend-screen-not-stated': () => 'whether it has a screen',
    'bend-idle-not-stated': () => 'which further cores it has',
    'bend-loops-missing': ({ loops }) => loopsIn(loops),
    'bend-loops-incomplete': ({ loops }) => `readings of ${loopsIn(loops)}`,
    'bend-rest-not-stated': () => 'whether it lay still under voltage',
    'bend-positions-missing': () => 'the insulation in three positions',
    'bend-positions-incomplete': () => 'readings of a position',
    'test-voltage-missing': () => 'the test voltage',
  },
};

/** The verdict's reason in one line. A go is what this test saw, and no more. */
export function bendHeadline(assessment: BendAssessment): string {
  return capital(headlineFrom(assessment, words, 'nothing opened or leaked while it was bent by hand'));
}
