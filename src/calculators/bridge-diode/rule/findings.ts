import type { FindingOf, Nothing } from '../../../kernel/assessment/assessment.ts';
import type { BusPayloads } from '../../../kernel/assessment/bus-discharge.ts';
import type { FigurePayloads } from '../../../kernel/assessment/possible-figures.ts';
import type { MotorLeadsPayloads } from '../../bridge/rule/findings.ts';
import type { DiodePlace } from '../../bridge/rule/switch-position.ts';
import type { AgreementPayloads } from './agreement.ts';
import type { DiodeRailPayloads } from './rail-findings.ts';

export interface BridgeDiodePayloads
  extends FigurePayloads,
    BusPayloads,
    DiodeRailPayloads,
    AgreementPayloads,
    MotorLeadsPayloads {
  'diode-negative': { places: DiodePlace[] };
  'diode-drifting': Nothing;
  'diode-steadiness-not-stated': Nothing;
  'diode-more-than-one': Nothing;
  'diode-blind-to-leaks': Nothing;
  'resistances-after-diodes': Nothing;
  'diode-failed': Nothing;
  'diode-suspect': Nothing;
  'diode-passed': Nothing;
}

export type BridgeDiodeFinding = FindingOf<BridgeDiodePayloads>;
