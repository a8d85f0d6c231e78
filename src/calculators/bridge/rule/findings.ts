import type { FindingOf, Nothing } from '../../../kernel/assessment/assessment.ts';
import type { BusPayloads } from '../../../kernel/assessment/bus-discharge.ts';
import type { FigurePayloads } from '../../../kernel/assessment/possible-figures.ts';
import type { BusOhmsPayloads } from './bus-ohms.ts';
import type { Lacking } from './conviction.ts';
import type { RailPayloads } from './rail-findings.ts';
import type { SecondPayloads } from './second-readings.ts';

export interface MotorLeadsPayloads {
  'motor-leads-connected': Nothing;
  'motor-leads-not-stated': Nothing;
}

export interface BridgePayloads
  extends FigurePayloads,
    BusPayloads,
    RailPayloads,
    SecondPayloads,
    BusOhmsPayloads,
    MotorLeadsPayloads {
  'all-open': Nothing;
  'tips-together-proven': Nothing;
  'bridge-more-than-one': Nothing;
  'bridge-failed': Nothing;
  'bridge-suspect': { lacking: Lacking[] };
  'bridge-passed': Nothing;
}

export type BridgeFinding = FindingOf<BridgePayloads>;
