import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { LimitId } from '../../../kernel/limits.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** What the insulation test is made on. */
export const testObjects = ['winding', 'wiring', 'machine-circuits', 'extra-low', 'brake-coil', 'feedback'] as const;

export type TestObject = (typeof testObjects)[number];

/** Whether something is still connected to the conductors under test. */
export type Whether = 'off' | 'connected' | 'unknown';

export interface TestVoltageInput {
  object: TestObject;
  /** Rated voltage of a winding, nominal voltage of a circuit, in V. */
  rated: Reading;
  /** Drives, their rectifiers and filters. */
  drive: Whether;
  /** Surge suppressors, sensors, rectifiers of brakes, other electronics. */
  sensitive: Whether;
  /** What is set on the insulation tester, in V. */
  set: Reading;
}

interface Rated {
  ratedVolts: number;
}

/** What the table gives. */
interface RowVolts {
  fromVolts: number;
  toVolts: number;
}

export interface TestVoltageChoicePayloads extends FigurePayloads {
  'never-on-electronics': Nothing;
  'drive-connected': Nothing;
  'drive-not-stated': Nothing;
  'sensitive-not-stated': Nothing;
  'lower-for-sensitive': Nothing;
  'rated-voltage-not-stated': Nothing;
  'not-extra-low': Rated;
  'extra-low-only-dc': Rated;
  'brake-supply-unknown': Rated;
  'beyond-tables': Rated;
  'set-voltage-missing': RowVolts;
  'set-too-high': RowVolts & { setVolts: number };
  'set-too-low': RowVolts & { setVolts: number };
  'set-fits': RowVolts & { setVolts: number };
  'minimum-of-table': { minimumOhms: number };
  'winding-minimum-elsewhere': Nothing;
}

export type TestVoltageChoiceFinding = FindingOf<TestVoltageChoicePayloads>;

/** Steps whose sentence is always the same. */
export type PlainStepCode =
  | FigureStepCode
  | 'check-feedback-otherwise'
  | 'take-drive-off'
  | 'take-sensitive-off'
  | 'state-rated'
  | 'choose-object-again'
  | 'choose-by-supply'
  | 'ask-for-procedure'
  | 'join-conductors'
  | 'repeat-at-full-voltage'
  | 'take-brake-parts-off'
  | 'discharge-afterwards';

export type TestVoltageStep = Step<PlainStepCode> | (Step<'set-the-tester'> & { volts: number });

export interface TestVoltageChoice extends Assessment<TestVoltageChoiceFinding, TestVoltageStep> {
  /** The published row that applies, if any. */
  row?: LimitId;
}
