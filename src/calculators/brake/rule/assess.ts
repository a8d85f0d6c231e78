import { findingMaker, type Step, step, verdictOf } from '../../../kernel/assessment/assessment.ts';
import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import { impossibleFigures } from '../../../kernel/assessment/possible-figures.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { brakeCores, judgeCoreOhms, judgeIsolation } from './cable.ts';
import { judgeCoil, plateOhms } from './coil.ts';
import type { BrakeAssessment, BrakeFinding, BrakeInput, BrakePayloads, BrakeStepCode } from './input.ts';
import { judgeRelease } from './release.ts';
import { judgeSupply } from './supply.ts';

const finding = findingMaker<BrakePayloads>();

/**
 * A holding brake by its coil (Ω, against its plate at 20 °C), its cores (Ω), the voltage at the motor (V DC, under load)
 * and what it did when it was released. Go needs all of them, and says nothing of the torque that the brake holds. An axis
 * that may fall and a bus that may be charged stop everything. Nothing in ohms is judged unless the bus was measured dead,
 * nor with brake plug or motor leads on the drive. With electronics between terminals and coil neither coil nor voltage is
 * judged. An impossible figure (not finite, or negative where it can't be) gives `figure-impossible`: undecided, nothing is
 * judged.
 */
export function assessBrake(input: BrakeInput): BrakeAssessment {
  const impossible = impossibleFigures(input, ['busVoltage']);
  if (impossible.length > 0) return conclude(impossible);
  if (input.axis === 'not-held') return conclude([finding('brake-axis-not-held', 'stop', { readings: ['axis'] })]);
  const discharge = judgeDischarge(input.busVoltage);
  if (discharge.severity === 'stop') return conclude([discharge]);
  const inOhms = discharge.severity === 'pass' && input.leads !== 'connected';
  const judged: BrakeFinding[] = [
    discharge,
    ...statements(input),
    ...judgeCircuit(input, inOhms),
    ...(inOhms ? judgeIsolation(input) : []),
  ];
  const released = judgeRelease(input.release, judged);
  const assessment = conclude([...judged, released]);
  return 'cause' in released ? { ...assessment, cause: released.cause } : assessment;
}

function statements({ axis, leads, ratedVolts }: BrakeInput): BrakeFinding[] {
  const found: BrakeFinding[] = [];
  if (axis !== 'held') found.push(finding('brake-axis-not-stated', 'undecided', { readings: ['axis'] }));
  if (leads !== 'off') {
    const code = leads === 'connected' ? 'brake-leads-connected' : 'brake-leads-not-stated';
    found.push(finding(code, 'undecided', { readings: ['leads'] }));
  }
  if (ratedVolts.kind === 'value' && ratedVolts.value >= limitValue('touch-voltage')) {
    const parts = { readings: ['ratedVolts'], limits: ['touch-voltage' as const], ratedVolts: ratedVolts.value };
    found.push(finding('brake-not-extra-low', 'caution', parts));
  }
  return found;
}

function judgeCircuit(input: BrakeInput, inOhms: boolean): BrakeFinding[] {
  const readings = ['circuit'];
  if (input.circuit === 'electronics') return [finding('brake-electronics', 'undecided', { readings })];
  if (input.circuit !== 'plain') return [finding('brake-circuit-not-stated', 'undecided', { readings })];
  const plate = plateOhms(input);
  const expectedOhms = typeof plate === 'number' ? plate : undefined;
  const cores = brakeCores(input.cable);
  const coreOhms = inOhms ? judgeCoreOhms(input, cores) : [];
  const coil = expectedOhms === undefined || !inOhms ? [] : judgeCoil(input, expectedOhms, cores);
  const coresFit = coreOhms.some(({ code }) => code === 'brake-cores-fit');
  const supply = judgeSupply(input, { expectedOhms, cores, coresFit });
  // Without a rated voltage nothing is said of the supply, and the plate is asked for.
  const unknown = typeof plate !== 'number' ? [plate] : supply.length === 0 ? [noVoltage()] : [];
  return [...unknown, ...coil, ...coreOhms, ...supply];
}

const noVoltage = () => finding('brake-plate-missing', 'undecided', { readings: ['ratedVolts'] });

function conclude(findings: BrakeFinding[]): BrakeAssessment {
  return { verdict: verdictOf(findings), findings, next: steps(findings) };
}

const stepAfter: Partial<Record<BrakeFinding['code'], BrakeStepCode[]>> = {
  'figure-impossible': ['read-figure-again'],
  'brake-axis-not-held': ['support-axis-first'],
  'brake-axis-not-stated': ['support-axis-first'],
  'bus-not-measured': ['measure-bus'],
  'bus-not-discharged': ['wait-and-measure-bus'],
  'bus-residual-voltage': ['wait-and-measure-bus'],
  'brake-leads-connected': ['take-leads-off'],
  'brake-leads-not-stated': ['take-leads-off'],
  'brake-electronics': ['look-between', 'ask-brake-manual'],
  'brake-circuit-not-stated': ['look-between'],
  'brake-plate-missing': ['read-plate'],
  'brake-plate-contradicts': ['read-plate'],
  'brake-coil-missing': ['measure-coil'],
  'brake-coil-temperature-missing': ['measure-coil-temperature'],
  'brake-coil-over-range': ['note-range'],
  'brake-coil-too-close': ['repeat-coil-with-care'],
  'brake-coil-low': ['repeat-coil-with-care', 'replace-coil'],
  'brake-coil-high': ['repeat-coil-with-care', 'replace-coil'],
  'brake-coil-open': ['repeat-coil-with-care', 'replace-coil'],
  'brake-cable-not-stated': ['state-brake-cable'],
  'brake-core-open': ['separate-cable'],
  'brake-cores-touch': ['separate-cable'],
  'brake-cores-below': ['repeat-coil-with-care', 'separate-cable'],
  'brake-cores-high': ['separate-cable'],
  'brake-cores-too-close': ['separate-cable'],
  'brake-core-path': ['separate-cable'],
  'brake-core-unclear': ['note-range'],
  'brake-cores-not-measured': ['measure-brake-cores'],
  'brake-supply-missing': ['measure-supply'],
  'brake-supply-low': ['find-feed-fault'],
  'brake-supply-high': ['find-feed-fault'],
  'brake-supply-too-close': ['ask-brake-manual'],
  'brake-drop-contradicts': ['measure-supply'],
  'brake-drop-unclear': ['measure-supply'],
  'brake-drop-high': ['find-drop'],
  'brake-release-not-tried': ['listen-to-release'],
};

function steps(findings: readonly BrakeFinding[]): Step<BrakeStepCode>[] {
  const codes = findings.flatMap((one) => [
    ...(stepAfter[one.code] ?? []),
    ...('cause' in one && one.cause === 'brake' ? (['have-brake-tested'] as const) : []),
  ]);
  return [...new Set(codes)].map((code) => step(code));
}
