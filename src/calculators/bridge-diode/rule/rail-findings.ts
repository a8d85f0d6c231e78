import type { FindingOf } from '../../../kernel/assessment/assessment.ts';
import type { DiodePlace, Rail, SwitchPosition } from '../../bridge/rule/switch-position.ts';

interface OfRail {
  rail: Rail;
}

interface OfPositions {
  positions: SwitchPosition[];
}

interface Suspected extends OfPositions {
  suspects: SwitchPosition[];
}

/** The readings that the sentence lists. */
interface OfPlaces {
  places: DiodePlace[];
}

export interface DiodeRailPayloads {
  'diode-incomplete': OfPlaces;
  'diode-short': Suspected;
  'diode-one-way': OfPositions;
  'diode-short-possible': OfPositions;
  'diode-all-alike': OfRail;
  'diode-rows-swapped': OfRail;
  'diode-leaky': Suspected;
  'diode-reverse-unclear': OfPlaces;
  'diode-blocks': OfRail;
  'diode-forward-open': { suspects: SwitchPosition[] };
  'diode-forward-all-open': OfRail;
  'diode-unbalanced': OfRail & { suspects: SwitchPosition[]; leastVolts: number; toleranceVolts: number };
  /** `range`: the possible differences; absent if they have no upper bound. */
  'diode-too-close': OfRail & { range?: { leastVolts: number; mostVolts: number }; toleranceVolts: number };
  'diode-balanced': OfRail & { mostVolts: number; toleranceVolts: number };
  'diode-drop-unusual': OfRail;
}

export type DiodeRailFinding = FindingOf<DiodeRailPayloads>;
