import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { intervalShown } from '../../../kernel/reading/interval.ts';
import type { BrakingCircuitInput, BrakingFinding, BrakingPayloads } from './input.ts';

const finding = findingMaker<BrakingPayloads>();

/** End to end against the plate. The plate's own tolerance counts, up to the difference that always fails. */
export function judgeResistor(input: BrakingCircuitInput): BrakingFinding[] {
  const { plate, plateTolerance, ohms, lead, instrument } = input;
  const found: BrakingFinding[] = [];
  if (lead === 'jumps') found.push(finding('resistor-lead-jumps', 'fail', { readings: ['lead'] }));
  else if (lead !== 'steady') found.push(finding('resistor-lead-not-stated', 'undecided', { readings: ['lead'] }));
  const stated = plate.kind === 'value' && plate.value > 0 ? plate.value : undefined;
  if (stated === undefined) found.push(finding('resistor-plate-missing', 'undecided', { readings: ['plate'] }));
  if (ohms.kind === 'missing') found.push(finding('resistor-missing', 'undecided', { readings: ['ohms'] }));
  const off = limitValue('braking-resistor-off-plate');
  // Without a plate any figure that a braking resistor can have is below that of an open winding.
  const highest = stated === undefined ? limitValue('winding-open') : stated * (1 + off / 100);
  const readings = ['ohms', 'plate'];
  if (isOpenCircuit(ohms, highest, instrument)) {
    const used: LimitId[] = ['braking-resistor-off-plate', 'open-on-any-range'];
    return [...found, finding('resistor-open', 'fail', { readings: ['ohms'], limits: used })];
  }
  if (ohms.kind === 'over') return [...found, finding('resistor-over-range', 'undecided', { readings: ['ohms'] })];
  if (stated === undefined || ohms.kind === 'missing') return found;
  const { lo, hi } = intervalShown(ohms, instrument);
  const typed = plateTolerance.kind === 'value' ? plateTolerance.value : undefined;
  const tolerance = Math.min(typed ?? limitValue('braking-resistor-tolerance'), off);
  const limits: LimitId[] = ['braking-resistor-tolerance', 'braking-resistor-off-plate'];
  const figures = { readings, limits, ohms: lo / 2 + hi / 2, plateOhms: stated };
  if (hi < stated * (1 - off / 100)) return [...found, finding('resistor-low', 'fail', figures)];
  if (lo > highest && Number.isFinite(hi)) return [...found, finding('resistor-high', 'fail', figures)];
  const fits = lo >= stated * (1 - tolerance / 100) && hi <= stated * (1 + tolerance / 100);
  const close = { readings, limits, plateOhms: stated, tolerancePercent: tolerance };
  return [
    ...found,
    fits
      ? finding('resistor-fits', 'pass', { ...figures, tolerancePercent: tolerance })
      : finding('resistor-too-close', 'undecided', close),
  ];
}

/** Resistor to housing and PE: by multimeter, then by insulation tester, since a meter's few volts break nothing down. */
export function judgeHousing({ toHousing, insulation, instrument }: BrakingCircuitInput): BrakingFinding[] {
  const found: BrakingFinding[] = [];
  const least = limitValue('braking-resistor-to-pe');
  const byMeter = intervalShown(toHousing, instrument);
  const meter = { readings: ['toHousing'], limits: ['braking-resistor-to-pe' as const], leastOhms: least };
  if (toHousing.kind === 'missing') found.push(finding('housing-missing', 'undecided', { readings: ['toHousing'] }));
  else if (byMeter.hi < least) found.push(finding('housing-path', 'fail', meter));
  else if (byMeter.lo < least) found.push(finding('housing-unclear', 'undecided', meter));
  const minimum = limitValue('machine-minimum-60204');
  // 1 MΩ of a coarse display may be half a megohm.
  const byTester = intervalShown(insulation);
  const tester = { readings: ['insulation'], limits: ['machine-minimum-60204' as const], leastOhms: minimum };
  if (insulation.kind === 'missing')
    found.push(finding('housing-insulation-missing', 'undecided', { readings: ['insulation'] }));
  else if (byTester.hi < minimum) found.push(finding('housing-insulation-bad', 'fail', tester));
  else if (byTester.lo < minimum) found.push(finding('housing-insulation-unclear', 'undecided', tester));
  if (found.length > 0) return found;
  const limits: LimitId[] = ['braking-resistor-to-pe', 'machine-minimum-60204'];
  return [finding('housing-free', 'pass', { readings: ['toHousing', 'insulation'], limits, leastOhms: minimum })];
}

/** A contact that opens when hot is closed while the resistor is cool. */
export function judgeThermal({ thermal, thermalOhms, instrument }: BrakingCircuitInput): BrakingFinding {
  const readings = ['thermal'];
  // A reading of a switch that is not there contradicts itself.
  if (thermal === 'none' && thermalOhms.kind === 'missing') return finding('thermal-none', 'note', { readings });
  if (thermal === 'other') return finding('thermal-other', 'undecided', { readings });
  if (thermal !== 'opens-hot' || thermalOhms.kind === 'missing')
    return finding('thermal-not-stated', 'undecided', { readings });
  const limits: LimitId[] = ['tips-together'];
  const parts = { readings: ['thermalOhms'], limits };
  const { hi } = intervalShown(thermalOhms, instrument);
  const closed = limitValue('tips-together');
  if (isOpenCircuit(thermalOhms, closed, instrument)) return finding('thermal-open', 'fail', parts);
  if (hi <= closed) return finding('thermal-closed', 'pass', parts);
  // Long thin leads have some ohms, a contact that is burnt has more.
  return finding('thermal-unclear', 'undecided', parts);
}
