import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { TestVoltagePayloads } from '../../../kernel/assessment/test-voltage.ts';
import type { Phase, Phases } from '../../../kernel/electrics/phases.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/**
 * Two cores in series, joined at the far end. `PE` and `screen` go back through U; `brake`, `sensor` and `feedback` are
 * the pair of that name, the feedback cable's the pair that shows most.
 */
export type LoopId = 'UV' | 'VW' | 'WU' | 'PE' | 'screen' | 'brake' | 'sensor' | 'feedback';

export const powerLoops = ['UV', 'VW', 'WU'] as const;
export const loopIds: readonly LoopId[] = [...powerLoops, 'PE', 'screen', 'brake', 'sensor', 'feedback'];

/** What opens: one core, or one of a pair that only the pair's own loop shows. */
export type BentCore = Phase | 'PE' | 'screen' | 'brake' | 'sensor' | 'feedback';

/** One movement of a loop, the tips left where they are. All in Ω. */
export interface Sweep {
  rest: Reading;
  /** Held by the meter while the cable was moved. */
  lowest: Reading;
  highest: Reading;
  /** At rest again. */
  after: Reading;
}

/** `watched`: by eye, without hold. `tester`: an insulation tester, so a test voltage on a cable that moves. */
export type BendMeter = 'hold' | 'watched' | 'tester' | 'not-stated';

/** `twice`: along the whole way and at both connectors, two times over. */
export type BendMoved = 'twice' | 'once' | 'part' | 'not-stated';

/** What the second movement moved. `half`: only the cable's half of a connector. `mated`: only a plugged connector. */
export type MovedAgain = 'cable' | 'half' | 'mated' | 'all' | 'not-stated';

export type Fitted = 'fitted' | 'none' | 'not-stated';

/** Which further pairs lie in this cable. */
export type IdlePairs = 'both' | 'brake' | 'sensor' | 'none' | 'not-stated';

export interface BendInput {
  /** `off`: off at both ends, so that no other path lies beside a core. */
  end: 'off' | 'on' | 'not-stated';
  meter: BendMeter;
  moved: BendMoved;
  loops: Record<LoopId, Sweep>;
  screen: Fitted;
  idle: IdlePairs;
  /** The second movement, the tips lifted and the cores joined again in between. */
  again: Record<LoopId, Sweep>;
  movedAgain: MovedAgain;
  /** The cable while the insulation tester was on. */
  whileOn: 'at-rest' | 'moved' | 'not-stated';
  /** In V. */
  testVoltage: Reading;
  /** Each core to all the others and PE, the cable fixed in this position, in Ω. */
  positions: readonly Phases<Reading>[];
  /** The position that leaked, once more, after the cable lay straight and read well. */
  badAgain: Phases<Reading>;
  /** One way, in m. */
  metres: Reading;
  /** Of a power core in mm², one of the table's. */
  squareMillimetres?: number;
}

/** What one movement of a loop shows. */
export type SweepState =
  | 'missing'
  | 'incomplete'
  | 'open-at-rest'
  | 'tips-moved'
  | 'jumps'
  | 'over-range'
  | 'contradicts'
  | 'dips'
  | 'unclear'
  | 'steady';

/** `proven-bad`: the same in two movements that do not rest on each other. `steady`: this test found nothing. */
export type BentPart = 'proven-bad' | 'suspect' | 'steady' | 'open';

interface Loops {
  loops: LoopId[];
  /** In the second movement. */
  again: boolean;
}

/** What one core shows in some positions; the first is 1. */
interface Leak {
  cores: Phase[];
  places: number[];
}

export interface BendPayloads
  extends FigurePayloads,
    Pick<TestVoltagePayloads, 'test-voltage-missing' | 'test-voltage-too-low'> {
  'bend-tester-while-moved': Nothing;
  'bend-moved-under-voltage': Nothing;
  'bend-end-on': Nothing;
  'bend-end-not-stated': Nothing;
  'bend-watched-by-eye': Nothing;
  'bend-meter-not-stated': Nothing;
  'bend-moved-once': Nothing;
  'bend-moved-in-part': Nothing;
  'bend-moved-not-stated': Nothing;
  'bend-screen-not-stated': Nothing;
  'bend-idle-not-stated': Nothing;
  'bend-loops-missing': { loops: LoopId[] };
  'bend-loops-incomplete': Loops;
  'bend-open-at-rest': Loops;
  'bend-tips-moved': Loops;
  'bend-over-range': Loops;
  'bend-contradicts': Loops;
  'bend-dips': Loops;
  'bend-unclear': Loops;
  /** Above what length, or any core, explains; or below half of the copper. */
  'bend-rest-odd': { loops: LoopId[]; low: boolean };
  'bend-cores-uneven': { core?: Phase };
  'bend-core-ohms': { ohms: Phases<number>; table?: number };
  /** Seen in one movement. `cores`: those that the pattern of the loops names, if it names any. */
  'bend-jumps': Loops & { cores: BentCore[] };
  'bend-core-proven': { cores: BentCore[]; place: 'cable' | 'half' };
  /** Quiet with the connector open, and it jumps while only the plugged connector is moved. */
  'bend-joint-jumps': { loops: LoopId[] };
  'bend-loops-steady': { loops: LoopId[] };
  'bend-hold-misses': { from: number; to: number };
  'bend-feedback-not-watched': Nothing;
  'bend-rest-not-stated': Nothing;
  'bend-positions-missing': { whole: number; wanted: number };
  'bend-positions-incomplete': { places: number[] };
  'bend-leaks': Leak & { leastOhms: number };
  'bend-leaks-everywhere': { cores: Phase[]; leastOhms: number };
  'bend-leak-proven': Leak;
  'bend-insulation-low': Leak & { wantedOhms: number };
  'bend-positions-hold': { whole: number; wantedOhms: number };
}

export type BendFinding = FindingOf<BendPayloads>;

export type BendStepCode =
  | FigureStepCode
  | 'use-low-voltage-meter'
  | 'fix-before-test'
  | 'free-both-ends'
  | 'use-hold'
  | 'move-whole-way'
  | 'say-which-cores'
  | 'watch-loops'
  | 'read-at-rest-twice'
  | 'clip-and-repeat'
  | 'note-bend-range'
  | 'join-far-end'
  | 'look-at-rest-first'
  | 'move-again'
  | 'move-connector-only'
  | 'replace-bent-cable'
  | 'look-into-joint'
  | 'test-in-positions'
  | 'set-500-volts'
  | 'bend-once-more'
  | 'separate-first';

export interface BendAssessment extends Assessment<BendFinding, Step<BendStepCode>> {
  parts: { cable: BentPart; feedbackCable: BentPart };
  /** The first movement of each loop, for the drawing. */
  loops: Record<LoopId, SweepState>;
  /** Loops that a second movement is asked of. */
  repeat: LoopId[];
}
