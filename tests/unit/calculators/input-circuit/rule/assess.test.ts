import { describe, expect, it } from 'vitest';
import { inputFindings } from '../../../../../src/calculators/input-circuit/words.ts';
import { missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../../../src/kernel/words/sentences.ts';
import { found } from '../../../../support/found.ts';
import { assess, type Change, drop, ol, three } from './sound.ts';

// Common practice, no source: what a diode, a fuse and a capacitor show a multimeter.

const zero = volts(0.002);
const shorted: Change = { plusConducting: three(drop, zero, drop), plusBlocking: three(ol, zero, ol) };
const blown: Change = { fuses: three(ohms(0.2), overOhms(), ohms(0.2)) };
const link: Change = { linkConducting: zero, linkBlocking: zero };

describe('inputs worked out by hand', () => {
  const rows: [what: string, Change, verdict: string, code: string, step?: string][] = [
    ['sound', {}, 'go', 'rectifier-sound', 'measure-bus-again'],
    // A shorted surge arrester from L1 to L2 leaves every diode as it is.
    ['sound, and the lines not', {}, 'go', 'lines-not-judged', 'measure-lines'],
    [
      'no precharge, as somebody says',
      { precharge: 'none', prechargePlate: missing, prechargeOhms: missing },
      'undecided',
      'precharge-none',
      'ask-about-precharge',
    ],
    [
      'OL of a precharge of 120 Ω, its range not noted: 120 · 1.25 = 150 Ω',
      { prechargePlate: ohms(120), prechargeOhms: overOhms() },
      'no-go',
      'precharge-open',
    ],
    [
      'OL of a precharge of 121 Ω, its range not noted',
      { prechargePlate: ohms(121), prechargeOhms: overOhms() },
      'undecided',
      'precharge-over-range',
      'note-precharge-range',
    ],
    ['fuses that read 0 MΩ', { fuses: three(ohms(0, 1e6)) }, 'undecided', 'fuse-unclear', 'measure-fuses'],
    ['precharge read in kilohms', { prechargeOhms: ohms(50, 100) }, 'undecided', 'precharge-too-close'],
    ['precharge 0.0 kΩ', { prechargeOhms: ohms(0, 100), again: true }, 'undecided', 'precharge-too-close'],
    [
      'one phase, L3 not there',
      { lines: 'two', plusConducting: three(drop, drop, missing), fuses: three(ohms(0.2), ohms(0.2), missing) },
      'go',
      'fuses-conduct',
    ],
    [
      'the same of a three-phase drive',
      { plusConducting: three(drop, drop, missing) },
      'undecided',
      'rectifier-missing',
      'measure-rectifier',
    ],
    ['a diode shorted', shorted, 'no-go', 'rectifier-short', 'read-twice'],
    ['a diode shorted, twice', { ...shorted, again: true }, 'no-go', 'rectifier-short', 'replace-drive'],
    [
      'twice, a neighbour still on',
      { ...shorted, again: true, others: 'connected' },
      'no-go',
      'others-connected',
      'take-rest-off',
    ],
    [
      'short one way round',
      { plusBlocking: three(ol, zero, ol), again: true },
      'no-go',
      'rectifier-short',
      'compare-input',
    ],
    ['a diode leaks', { minusBlocking: three(volts(0.6), ol, ol) }, 'no-go', 'rectifier-leaky', 'read-twice'],
    ['a diode open', { minusConducting: three(drop, drop, ol) }, 'no-go', 'rectifier-open', 'read-twice'],
    // A cracked joint of 400 Ω at a milliampere.
    [
      'a joint in series with a diode',
      { plusConducting: three(drop, volts(0.86, 0.001), drop) },
      'undecided',
      'rectifier-uneven',
      'compare-input',
    ],
    ['drops 0.05 V apart', { plusConducting: three(drop, volts(0.51, 0.001), drop) }, 'go', 'rectifier-sound'],
    ['a whole side open', { plusConducting: three(ol) }, 'undecided', 'rectifier-side-open', 'compare-input'],
    ['rows exchanged', { plusConducting: three(ol), plusBlocking: three(drop) }, 'undecided', 'rectifier-exchanged'],
    [
      'a bound that is no block',
      { plusBlocking: three({ kind: 'over', unit: 'V', atLeast: 1 }) },
      'undecided',
      'rectifier-unclear',
    ],
    ['a fuse open, the drive sound', blown, 'no-go', 'fuse-open', 'look-before-drive'],
    ['a fuse of 3 Ω', { fuses: three(ohms(3)) }, 'undecided', 'fuse-unclear', 'measure-fuses'],
    ['fuses not measured', { fuses: three(missing) }, 'undecided', 'fuses-missing', 'measure-fuses'],
    ['a bus short', link, 'no-go', 'link-short', 'read-twice'],
    ['a bus short, twice, alone', { ...link, again: true }, 'no-go', 'link-short', 'replace-drive'],
    ['a bus that stays low', { linkBlocking: volts(0.9) }, 'no-go', 'link-leaky'],
    // U to DC+ shorted: one freewheel diode is left, 0.42 V, where the rectifier drops 0.46 V.
    ['one half of a leg shorted', { linkConducting: volts(0.42, 0.001) }, 'undecided', 'link-one-drop', 'read-stages'],
    ['one drop and 0.05 V', { linkConducting: volts(0.51, 0.001) }, 'undecided', 'link-one-drop'],
    ['two low drops', { linkConducting: volts(0.6, 0.001) }, 'go', 'link-sound'],
    ['no bus terminals', { linkConducting: ol }, 'undecided', 'link-open', 'compare-input'],
    ['leads exchanged', { linkConducting: ol, linkBlocking: volts(0.85) }, 'undecided', 'link-exchanged'],
    ['open at once', { climb: 'at-once' }, 'undecided', 'link-no-climb', 'compare-input'],
    ['climb not stated', { climb: 'not-stated' }, 'undecided', 'link-climb-not-stated', 'measure-link'],
    ['bus not measured both ways', { linkBlocking: missing }, 'undecided', 'link-missing', 'measure-link'],
    // 47 Ω · 1.25 = 58.75 Ω, · 1.1 = 51.7 Ω.
    ['precharge far off', { prechargeOhms: ohms(59) }, 'no-go', 'precharge-off'],
    [
      'precharge between the marks',
      { prechargeOhms: ohms(52) },
      'undecided',
      'precharge-too-close',
      'ask-about-precharge',
    ],
    [
      'precharge contact welded',
      { prechargeOhms: ohms(0.3), again: true },
      'no-go',
      'precharge-bypassed',
      'replace-drive',
    ],
    ['precharge open', { prechargeOhms: overOhms() }, 'no-go', 'precharge-open', 'read-twice'],
    ['precharge out of reach', { precharge: 'inside' }, 'undecided', 'precharge-inside', 'ask-about-precharge'],
    ['precharge not stated', { precharge: 'not-stated' }, 'undecided', 'precharge-missing', 'ask-about-precharge'],
    [
      'supply leads on',
      { supplyLeads: 'connected', ...shorted },
      'undecided',
      'supply-leads-connected',
      'take-supply-leads-off',
    ],
    [
      'supply leads not stated',
      { supplyLeads: 'not-stated' },
      'undecided',
      'supply-leads-not-stated',
      'take-supply-leads-off',
    ],
    ['others not stated', { others: 'not-stated' }, 'undecided', 'others-not-stated', 'take-others-off'],
    ['bus not measured', { busVoltage: missing }, 'undecided', 'bus-not-measured', 'measure-bus'],
    ['bus charged', { busVoltage: volts(320), ...link }, 'undecided', 'bus-not-discharged', 'wait-and-measure-bus'],
    [
      'a reading below zero',
      { linkBlocking: volts(-1), ...shorted },
      'undecided',
      'input-negative',
      'wait-and-measure-bus',
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, code, step) => {
    const { verdict: given, findings, next } = assess(change);
    expect([given, findings.map((one) => one.code)]).toEqual([verdict, expect.arrayContaining([code])]);
    if (step !== undefined) expect(next.map((one) => one.code)).toContain(step);
  });

  it('names the diode and the line', () => {
    expect(found(assess(shorted).findings, 'rectifier-short').diodes).toEqual([{ side: 'plus', line: 'L2' }]);
    expect(found(assess(blown).findings, 'fuse-open').lines).toEqual(['L2']);
  });

  it('says of an open diode what else reads so', () => {
    const { findings } = assess({ plusConducting: three(drop, ol, ol) });
    expect(sentenceOf(inputFindings, found(findings, 'rectifier-open'))).toContain('controlled rectifier');
  });

  it('says of a precharge far off that a thermistor may be sound', () => {
    const { findings } = assess({ prechargePlate: ohms(10), prechargeOhms: ohms(6, 0.1) });
    expect(sentenceOf(inputFindings, found(findings, 'precharge-off'))).toContain('thermistor');
  });

  it('speaks of the lines only beside a rectifier that reads well', () => {
    expect(assess(shorted).findings.map(({ code }) => code)).not.toContain('lines-not-judged');
  });

  it('looks before the drive only if the drive reads well', () => {
    expect(assess({ ...blown, ...shorted }).next.map(({ code }) => code)).not.toContain('look-before-drive');
  });
});
