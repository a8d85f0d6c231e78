import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { judgePair, pairLimits } from '../../../kernel/assessment/diode-pair.ts';
import { isOpenCircuit } from '../../../kernel/assessment/open-circuit.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { intervalShown } from '../../../kernel/reading/interval.ts';
import type { InputCircuitInput, InputFinding, InputPayloads } from './input.ts';
import { dropsOf, linesOf } from './rectifier.ts';

const finding = findingMaker<InputPayloads>();

/** A fuse conducts like the tips held together, or it is open. */
export function judgeFuses(input: InputCircuitInput): InputFinding[] {
  const most = limitValue('tips-together');
  const limits: LimitId[] = ['tips-together'];
  const all = linesOf(input).map((line) => {
    const reading = input.fuses[line];
    const { hi } = intervalShown(reading, input.instrument);
    const open = isOpenCircuit(reading, most, input.instrument);
    const state = reading.kind === 'missing' ? 'missing' : open ? 'open' : hi <= most ? 'conducts' : 'unclear';
    return { line, state };
  });
  const of = (wanted: string) => all.filter(({ state }) => state === wanted).map(({ line }) => line);
  const fields = (lines: readonly string[]) => lines.map((line) => `fuse${line}`);
  const [open, unclear, absent] = [of('open'), of('unclear'), of('missing')];
  const found: InputFinding[] = [];
  if (open.length > 0) found.push(finding('fuse-open', 'fail', { readings: fields(open), limits, lines: open }));
  if (unclear.length > 0) {
    const parts = { readings: fields(unclear), limits, lines: unclear, mostOhms: most };
    found.push(finding('fuse-unclear', 'undecided', parts));
  }
  if (absent.length > 0)
    found.push(finding('fuses-missing', 'undecided', { readings: fields(absent), limits, lines: absent }));
  return found.length > 0 ? found : [finding('fuses-conduct', 'pass', { readings: fields(of('conducts')), limits })];
}

/** Two diodes in series have more than one of the rectifier, unless one half of a leg or the chopper is shorted. */
function conductsByOneDrop(input: InputCircuitInput): boolean {
  const figures = [...dropsOf(input, 'plus'), ...dropsOf(input, 'minus')].map(({ volts }) => volts);
  const { lo } = intervalShown(input.linkConducting, input.instrument);
  return figures.length > 0 && lo <= Math.min(...figures) + limitValue('diode-balance');
}

/** DC+ to DC− both ways: the diodes of the stage conduct one way, and the capacitor charges the other way. */
export function judgeLink(input: InputCircuitInput): InputFinding[] {
  const { linkConducting, linkBlocking, climb, instrument } = input;
  const parts = { readings: ['linkConducting', 'linkBlocking'], limits: [...pairLimits] };
  const readings = ['climb'];
  switch (judgePair({ conducting: linkConducting, blocking: linkBlocking }, instrument)) {
    case 'short-both-ways':
      return [finding('link-short', 'fail', { ...parts, bothWays: true })];
    case 'short-one-way':
      return [finding('link-short', 'fail', { ...parts, bothWays: false })];
    case 'leaky':
      return [finding('link-leaky', 'fail', parts)];
    case 'open':
      return [finding('link-open', 'undecided', parts)];
    case 'exchanged':
      return [finding('link-exchanged', 'undecided', parts)];
    case 'unclear':
      return [finding('link-unclear', 'undecided', parts)];
    case 'missing':
      return [finding('link-missing', 'undecided', parts)];
    case 'sound':
      break;
  }
  const sound = conductsByOneDrop(input)
    ? finding('link-one-drop', 'undecided', { ...parts, limits: [...pairLimits, 'diode-balance'] })
    : finding('link-sound', 'pass', parts);
  if (climb === 'climbs') return [sound, finding('link-climbs', 'pass', { readings })];
  return [
    sound,
    climb === 'at-once'
      ? finding('link-no-climb', 'undecided', { readings })
      : finding('link-climb-not-stated', 'undecided', { readings }),
  ];
}

/** The resistor that fills the bus, with its contact beside it: a contact that is shut reads like the tips together. */
export function judgePrecharge(input: InputCircuitInput): InputFinding {
  const { precharge, prechargePlate, prechargeOhms, instrument } = input;
  const readings = ['prechargeOhms', 'prechargePlate'];
  if (precharge === 'none') return finding('precharge-none', 'undecided', { readings: ['precharge'] });
  if (precharge === 'inside') return finding('precharge-inside', 'undecided', { readings: ['precharge'] });
  const plate = prechargePlate.kind === 'value' && prechargePlate.value > 0 ? prechargePlate.value : undefined;
  if (precharge !== 'reached' || plate === undefined || prechargeOhms.kind === 'missing')
    return finding('precharge-missing', 'undecided', { readings });
  const [tolerance, off] = [limitValue('precharge-tolerance'), limitValue('precharge-off-plate')];
  const limits: LimitId[] = ['precharge-tolerance', 'precharge-off-plate', 'tips-together'];
  const { lo, hi } = intervalShown(prechargeOhms, instrument);
  const part = (percent: number) => plate * (1 + percent / 100);
  if (isOpenCircuit(prechargeOhms, part(off), instrument)) {
    return finding('precharge-open', 'fail', { readings, limits: [...limits, 'open-on-any-range'] });
  }
  if (prechargeOhms.kind === 'over') return finding('precharge-over-range', 'undecided', { readings });
  if (hi <= limitValue('tips-together') && hi < part(-off))
    return finding('precharge-bypassed', 'fail', { readings, limits });
  const figures = { readings, limits, ohms: lo / 2 + hi / 2, plateOhms: plate };
  if (hi < part(-off) || (lo > part(off) && Number.isFinite(hi))) return finding('precharge-off', 'fail', figures);
  return lo >= part(-tolerance) && hi <= part(tolerance)
    ? finding('precharge-fits', 'pass', { ...figures, tolerancePercent: tolerance })
    : finding('precharge-too-close', 'undecided', { readings, limits, plateOhms: plate, tolerancePercent: tolerance });
}
