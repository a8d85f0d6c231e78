import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type CableFloor, cableFloor, lengthExplains } from '../../../kernel/assessment/cable-floor.ts';
import { judgeAfterTrip } from '../../../kernel/assessment/judge-insulation.ts';
import { judgePe, type PeJudgement } from '../../../kernel/assessment/protective-conductor.ts';
import { phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { asRead, type Instrument, intervalOf } from '../../../kernel/reading/interval.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import type { Grounds } from './conviction.ts';
import type { IsolationFinding, IsolationInput, IsolationPayloads } from './input.ts';
import { type Judge, lowestOf, notTaken, type PartReadings, withSecond } from './part-readings.ts';
import { judgeStage, type StageStatus } from './stage.ts';

const finding = findingMaker<IsolationPayloads>();

/** Whether a protective conductor, joined or the motor's own, shows continuity. */
export function peFinding(stage: 'joined' | 'motor', judgement: PeJudgement): IsolationFinding {
  const severity = {
    short: 'pass',
    'higher-than-expected': 'undecided',
    'not-short': 'fail',
    'not-proven': 'undecided',
    missing: 'undecided',
  } as const;
  return finding(`${stage}-pe-${judgement}`, severity[judgement], {
    readings: [`${stage}PE`],
    limits: ['pe-dead-short'],
  });
}

/** A cable has no warm winding, so its readings are not corrected; its length may explain one below the after-trip limit. */
export function cableJudge(floor: CableFloor | undefined, instrument: Instrument): Judge {
  return (reading) => {
    const interval = intervalOf(reading, instrument);
    const judgement = judgeAfterTrip(reading, interval, limitValue('after-trip-point'), asRead);
    return judgement === 'bad' && lengthExplains(interval, floor) ? 'length-explains' : judgement;
  };
}

export function floorOf({ cableMetres, cableMaterial, cableTemperature }: IsolationInput): CableFloor | undefined {
  return cableFloor({
    metres: cableMetres ?? missing,
    material: cableMaterial ?? 'not-stated',
    temperature: cableTemperature ?? missing,
  });
}

export function judgeCable(input: IsolationInput, instrument: Instrument, tested: boolean): PartReadings {
  const { cable, bonded, cableEndsChecked } = input;
  if (cable === undefined && bonded === undefined) return notTaken;
  // What was read through a filter is the filter's.
  if (input.filter === 'fitted') return { ...notTaken, status: 'undecided' };
  const floor = floorOf(input);
  const judge = cableJudge(floor, instrument);
  const rows = [
    ...(cable ? [judgeStage('cable', cable, judge, tested, floor?.limits)] : []),
    ...(bonded ? [judgeStage('bonded', bonded, judge, tested, floor?.limits)] : []),
  ];
  const findings: IsolationFinding[] = rows.flatMap((row) => row.findings);
  // With both ends free, the tester does not see a leak from a core to its own PE core or screen.
  if (bonded === undefined) findings.push(finding('bonded-row-missing', 'undecided'));
  const core = judgeCablePe(cable?.PE ?? missing, judge, cableEndsChecked);
  findings.push(core);
  const showsBad = rows.some(({ status }) => status === 'bad') || core.severity === 'fail';
  const complete = tested && rows.length === 2 && !findings.some(({ code }) => openCodes.has(code));
  const good = complete && findings.every(({ severity }) => severity === 'pass');
  const explained = complete && findings.every(({ code, severity }) => severity === 'pass' || explainedCodes.has(code));
  const status: StageStatus =
    core.code === 'cable-pe-low' ? 'undecided' : showsBad ? 'bad' : good ? 'good' : 'undecided';
  const minimum = limitValue('machine-minimum-60204');
  const grounds: Grounds = {
    belowMinimum: ({ hi }) => hi < minimum,
    minimum: { ohms: minimum, limits: ['machine-minimum-60204'] },
    most: ({ hi }) => hi,
  };
  const all = [cable, bonded].flatMap((row) => (row ? phases.map((phase) => row[phase]) : []));
  const lowest = lowestOf([...all, cable?.PE ?? missing], instrument);
  const taken: PartReadings = { status, showsBad, cleared: good || explained, convicted: false, findings };
  return withSecond('cable', taken, lowest, input.moreOfCable, { judge, instrument, tested, complete, grounds });
}

/** A reading is missing, or the hook-up is in doubt: then no second reading settles the part. */
const openCodes = new Set<IsolationFinding['code']>(['stage-incomplete', 'cable-pe-missing', 'cable-pe-low']);

const explainedCodes = new Set<IsolationFinding['code']>(['stage-length-explains', 'cable-pe-length-explains']);

/**
 * On the free cable the PE core is isolated like the others. A low reading usually means an end that is still
 * connected.
 */
function judgeCablePe(reading: Reading, judge: Judge, endsChecked: boolean): IsolationFinding {
  const parts = { readings: ['cablePE'], limits: ['after-trip-point' as const] };
  if (reading.kind === 'missing') return finding('cable-pe-missing', 'undecided', parts);
  const judgement = judge(reading);
  if (judgement === 'good') return finding('cable-pe-isolated', 'pass', parts);
  if (judgement === 'length-explains') return finding('cable-pe-length-explains', 'undecided', parts);
  if (judgement !== 'bad') return finding('cable-pe-unclear', 'undecided', parts);
  return endsChecked
    ? finding('cable-pe-low-ends-checked', 'fail', parts)
    : finding('cable-pe-low', 'undecided', parts);
}

export function judgeMotor(
  { motor, moreOfMotor }: Pick<IsolationInput, 'motor' | 'moreOfMotor'>,
  judge: Judge,
  tested: boolean,
  corrections: LimitId[],
  { instrument, grounds }: { instrument: Instrument; grounds: Grounds },
): PartReadings {
  if (motor === undefined) return notTaken;
  const row = judgeStage('motor', motor, judge, tested, corrections);
  const ownPe = judgePe(motor.PE);
  const shorts = phases.filter((phase) => judgePe(motor[phase]) === 'short').length;
  const findings: IsolationFinding[] = [...row.findings, peFinding('motor', ownPe)];
  const readings = phases.map((phase) => `motor${phase}`);
  if (shorts > 0 && ownPe === 'short')
    findings.push(finding('motor-two-shorts', 'fail', { readings, limits: ['pe-dead-short'] }));
  // Exactly one short, as it should be, but at another pin: the pins may have been confused.
  const pinsMistaken = shorts === 1 && ownPe === 'not-short';
  if (pinsMistaken) findings.push(finding('motor-pins-mistaken', 'undecided', { readings }));
  const showsBad = row.status === 'bad' || ownPe === 'not-short';
  const good = row.status === 'good' && ownPe === 'short';
  const status: StageStatus = pinsMistaken ? 'undecided' : showsBad ? 'bad' : good ? 'good' : 'undecided';
  const lowest = lowestOf(
    phases.map((phase) => motor[phase]),
    instrument,
  );
  const windingBad = row.status === 'bad';
  const taken: PartReadings = { status, showsBad: windingBad, cleared: good, convicted: false, findings };
  const complete = tested && ownPe === 'short' && !findings.some(({ code }) => openCodes.has(code));
  const judged = withSecond('motor', taken, lowest, moreOfMotor, { judge, instrument, tested, complete, grounds });
  // A pin without its PE is another fault, which no second reading of a winding lifts.
  return ownPe === 'not-short' ? { ...judged, status, showsBad, cleared: false } : judged;
}
