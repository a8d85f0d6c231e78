import { describe, expect, it } from 'vitest';
import { calculator as absorption } from '../../../src/calculators/absorption/form.ts';
import { calculator as bendTest } from '../../../src/calculators/bend-test/form.ts';
import { calculator as brake } from '../../../src/calculators/brake/form.ts';
import { calculator as brakingCircuit } from '../../../src/calculators/braking-circuit/form.ts';
import { calculator as bridge } from '../../../src/calculators/bridge/form.ts';
import { calculator as bridgeDiode } from '../../../src/calculators/bridge-diode/form.ts';
import { calculator as cableLength } from '../../../src/calculators/cable-length/form.ts';
import { calculator as coreResistance } from '../../../src/calculators/core-resistance/form.ts';
import { calculator as discharge } from '../../../src/calculators/discharge/form.ts';
import { calculator as inputCircuit } from '../../../src/calculators/input-circuit/form.ts';
import { calculator as insulation } from '../../../src/calculators/insulation/form.ts';
import { calculator as isolation } from '../../../src/calculators/isolation/form.ts';
import { calculator as testVoltage } from '../../../src/calculators/test-voltage/form.ts';
import { calculator as trend } from '../../../src/calculators/trend/form.ts';
import { calculator as tripTrace } from '../../../src/calculators/trip-trace/form.ts';
import { writeKeptTrace } from '../../../src/calculators/trip-trace/kept-trace.ts';
import { measureTrace } from '../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { plotSeries } from '../../../src/calculators/trip-trace/plot-series.ts';
import { calculator as winding } from '../../../src/calculators/winding/form.ts';
import type { CalculatorForm } from '../../../src/kernel/form/calculator-form.ts';
import { fillForm, type Typed } from '../../../src/kernel/form/field.ts';
import { headlineOf } from '../../../src/kernel/form/verdict-words.ts';
import { type Computed, computedTrace, turning } from './trip-trace/figures.ts';

// Readings and verdicts by common practice and the limits of content/limits; the words are the project's own.

/** Headlines by what is typed beside a sound set. */
function says(calculator: CalculatorForm, sound: Typed, table: [string, Typed, string, string][]) {
  it.each(table)('%s', (_, change, verdict, headline) => {
    const outcome = calculator.judge(fillForm(calculator.fields, { ...sound, ...change }));
    expect(outcome.state === 'judged' ? outcome.verdict : outcome.state).toBe(verdict);
    expect(headlineOf(outcome)).toBe(headline);
  });
}

describe('bridge', () => {
  const sound = {
    ...{ busVoltage: '0.03 V', motorLeads: 'off' },
    ...{ plusU: '450k', plusV: '455k', plusW: '452k', plusAgain: '450k' },
    ...{ minusU: '460k', minusV: '458k', minusW: '461k', minusAgain: '460k' },
  };
  const short = { minusV: '3.8 Ω' };
  const twice = { ...short, worstAgain: '3.9 Ω', alsoOnBus: 'nothing' };
  says(bridge, sound, [
    ['sound', {}, 'go', 'No short, and none of the six reads odd'],
    ['one short', short, 'no-go', 'Short read at the lower transistor of V; drive suspect, not proven bad'],
    ['the short twice', twice, 'no-go', 'The lower transistor of V is shorted'],
    ['charged', { busVoltage: '311 V' }, 'stop', 'Up to 311 V on the bus'],
    ['charged, beside a slip', { busVoltage: '311 V', plusU: '4x' }, 'unreadable', 'Up to 311 V on the bus'],
    ['a slip', { plusU: '4x' }, 'unreadable', 'Mend the field that is marked. The other entries are kept.'],
    ['no bus reading', { busVoltage: '' }, 'undecided', 'Still missing: the DC-bus voltage'],
    ['two lacking', { minusV: '', minusW: '' }, 'undecided', 'Still missing: DC− to V and DC− to W'],
    ['not clearly off', { minusV: '260k' }, 'undecided', 'DC− to V is odd, but not clearly off'],
    // It agrees with DC+ to U alone.
    ['once more', { worstAgain: '410k' }, 'undecided', 'The reading that was taken once more fits neither rail'],
    ['a high one', { minusV: '1.2M' }, 'no-go', 'DC− to V reads high; drive suspect, not proven bad'],
  ]);
});

describe('bridge by diode test', () => {
  const rows = ['plus', 'minus'].flatMap((rail) =>
    ['U', 'V', 'W'].flatMap((phase) => [
      [`${rail}Forward${phase}`, '0.412 V'],
      [`${rail}Reverse${phase}`, 'OL'],
    ]),
  );
  const sound = {
    busVoltage: '0.03 V',
    motorLeads: 'off',
    steadiness: 'steady',
    ...Object.fromEntries(rows),
  };
  const low = { minusForwardV: '0.002 V' };
  says(bridgeDiode, sound, [
    ['sound', {}, 'go', 'All six positions block and conduct alike'],
    ['both ways', { ...low, minusReverseV: '0.002 V' }, 'no-go', 'The lower transistor of V is shorted'],
    ['one way', low, 'no-go', 'Short read at the lower transistor of V; drive suspect, not proven bad'],
    ['drifting', { steadiness: 'drifting' }, 'stop', 'The readings drift: the bus is not dead'],
    ['not said', { steadiness: '' }, 'undecided', 'Still missing: whether the readings stand still'],
  ]);
});

describe('insulation', () => {
  const sound = {
    ...{
      occasion: 'after-trip',
      together: '1.2 GΩ',
      PE: '0.2 Ω',
      idleCores: 'to-pe',
    },
    ...{
      testVoltage: '500 V',
      ratedVoltage: '400 V',
      windingTemperature: '22 °C',
    },
  };
  const single = {
    rowKind: 'single',
    together: '',
    U: '1 MΩ',
    V: '2 GΩ',
    W: '320k',
  };
  const warm = { together: '60 MΩ', windingTemperature: '80 °C' };
  says(insulation, sound, [
    ['sound', {}, 'go', 'The insulation to PE passes, and PE shows continuity'],
    ['bad', { together: '320k' }, 'no-go', 'U, V and W joined (320 kΩ) to PE fails the point of 100 MΩ'],
    ['two of three', single, 'no-go', 'U and W to PE fail the point of 100 MΩ'],
    ['PE open', { PE: 'OL' }, 'no-go', 'PE shows no continuity: broken or bad contact'],
    ['warm', warm, 'undecided', 'U, V and W joined may be low only because the winding is warm'],
    ['begun', { PE: '', testVoltage: '' }, 'undecided', 'Still missing: the PE pin to the frame and the test voltage'],
    ['no occasion', { occasion: '' }, 'unchosen', 'Answer first: Why do you measure?'],
  ]);
});

describe('isolation', () => {
  const joined = {
    ...{ idleCores: 'to-pe', joinedTogether: '12k', joinedPE: '0.2 Ω' },
    ...{ testVoltage: '500 V', windingTemperature: '22 °C' },
  };
  const cable = {
    ...{ cableU: '2 GΩ', cableV: '2 GΩ', cableW: '12k', cablePE: '2 GΩ' },
    ...{ bondedU: '2 GΩ', bondedV: '2 GΩ', bondedW: '12k' },
  };
  const motor = { motorTogether: '2 GΩ', motorPE: '0.1 Ω' };
  const again = { cableAgain: '11k', cableDried: 'yes' };
  const bothGood = {
    joinedTogether: '1 GΩ',
    ...cable,
    cableW: '2 GΩ',
    bondedW: '2 GΩ',
    ...motor,
  };
  says(isolation, joined, [
    ['joined fails', {}, 'no-go', 'Joined, U, V and W fail: cable or motor'],
    ['cable once', { ...cable, ...motor }, 'no-go', 'Cable suspect, core W, not proven bad; motor proven good'],
    ['cable twice', { ...cable, ...motor, ...again }, 'no-go', 'Cable proven bad, core W; motor proven good'],
    ['all good', bothGood, 'go', 'Cable and motor both proven good'],
    ['PE', { joinedTogether: '1 GΩ', joinedPE: 'OL' }, 'no-go', 'PE suspect: it shows no continuity'],
    ['joined', { joinedTogether: '1 GΩ' }, 'undecided', 'Joined reads good; only the parts alone prove them'],
  ]);
});

describe('winding', () => {
  const sound = {
    UV: '1.820 Ω',
    VW: '1.822 Ω',
    WU: '1.821 Ω',
    leads: 'four',
    connection: 'star',
  };
  const open = { UV: 'OL', WU: 'OL' };
  const low = { UV: '2.100 Ω', WU: '2.100 Ω' };
  const both = {
    ...low,
    UVagain: '2.100 Ω',
    VWagain: '1.822 Ω',
    WUagain: '2.100 Ω',
  };
  says(winding, sound, [
    ['alike', {}, 'go', 'The three windings are alike'],
    ['open', open, 'no-go', 'U–V and W–U are open; suspect phase U; cause not proven'],
    ['one off', low, 'no-go', 'The windings differ by 9.2 % from their mean; suspect U if in star; cause not proven'],
    ['off twice', both, 'no-go', 'The windings differ by 9.2 % from their mean; suspect U if in star; two sets agree'],
    ['lacking', { VW: '' }, 'undecided', 'Still missing: V–W'],
  ]);
});

describe('the others', () => {
  const curve = { windingKind: 'form-wound', t60: '200 MΩ', t600: '500 MΩ' };
  says(absorption, curve, [
    ['rises', {}, 'go', 'The curve passes: polarization index 2.49 to 2.51'],
    ['flat', { t600: '240 MΩ' }, 'no-go', 'Polarization index 1.19 to 1.21, below 2'],
    ['begun', { t600: '' }, 'undecided', 'Still missing: the readings at 1 minute and at 10 minutes'],
  ]);
  const meter = 'only the meter tells that it is dead';
  says(discharge, { startVoltage: '560 V', timeConstant: '60 s' }, [
    ['wait', {}, 'undecided', `Up to 3 min 3 s to 50 V after the supply is cut; ${meter}`],
    [
      'feed',
      { first: '300 V', second: '320 V', elapsed: '60 s' },
      'stop',
      'The voltage rises: something feeds the bus',
    ],
  ]);
  says(
    testVoltage,
    {
      object: 'winding',
      rated: '400 V',
      set: '500 V',
      drive: 'off',
      sensitive: 'off',
    },
    [
      ['fits', {}, 'go', 'As stated, the test may be made with 500 V'],
      ['drive on', { drive: 'connected' }, 'stop', 'A drive still hangs on these conductors'],
    ],
  );
  says(cableLength, { insulation: 'pvc' }, [
    ['begun', { reading: '5 MΩ' }, 'undecided', 'Still missing: both diameters and the length'],
  ]);
  says(trend, {}, [
    [
      'rows',
      { rows: 'date,reading,temperature\n2020-01-01,900 MΩ,20' },
      'undecided',
      'Too few readings to tell a trend from scatter',
    ],
  ]);
});

describe('holding brake', () => {
  const sound = {
    ...{
      axis: 'held',
      busVoltage: '0.02 V',
      plugAndLeads: 'off',
      circuit: 'plain',
      ratedVolts: '24 V',
      ratedWatts: '12 W',
      coilTemperature: '20 °C',
    },
    ...{ atMotor: '47.6 Ω', toPhases: '>20M', toPe: '>20M', coresApart: '>20M', plugVolts: '23.4 V', release: 'opens' },
  };
  const shut = { release: 'shut', plugVolts: '12 V' };
  says(brake, sound, [
    ['sound', {}, 'go', 'Coil, cores and voltage fit, and it opens'],
    [
      'plug still on',
      { plugAndLeads: 'connected' },
      'undecided',
      'With plug or leads on the drive, no ohms are judged',
    ],
    [
      'bus and leads not stated',
      { busVoltage: '', plugAndLeads: '' },
      'undecided',
      'Still missing: the DC-bus voltage and whether plug and leads are off',
    ],
    ['may fall', { axis: 'not-held' }, 'stop', 'The axis may fall: hold it first'],
    [
      'begun',
      { plugVolts: '', release: 'not-tried' },
      'undecided',
      'Still missing: the voltage at the brake and whether it opens',
    ],
    ['shut, and why', shut, 'no-go', 'It stays shut; too little voltage at the brake; the voltage explains it'],
    ['drags though fed', { release: 'drags' }, 'no-go', 'It drags; suspect: the brake itself'],
    ['shut, not known why', { release: 'shut', plugVolts: '' }, 'no-go', 'It stays shut; cause not shown yet'],
    ['a path', { toPe: '4k' }, 'no-go', 'A path: the brake cores to PE'],
    ['close', { atMotor: '58 Ω' }, 'undecided', 'The coil neither passes nor fails'],
  ]);
});

describe('braking circuit', () => {
  const sound = {
    ...{ busVoltage: '0.03 V', plate: '47 Ω', ohms: '46 Ω', lead: 'steady', toHousing: '>20M', insulation: '>500M' },
    ...{ thermal: 'none', upperConducting: '0.46', upperBlocking: 'OL', lowerConducting: '0.47', lowerBlocking: 'OL' },
  };
  const shorted = { lowerConducting: '0.002 V', lowerBlocking: '0.002 V' };
  says(brakingCircuit, sound, [
    ['sound', {}, 'go', 'Resistor, housing, switch and chopper read as they should'],
    ['charged', { busVoltage: '320 V' }, 'stop', 'Up to 320 V on the bus'],
    ['shorted', shorted, 'no-go', 'Short read both ways, B to DC−'],
    ['open', { ohms: 'OL' }, 'no-go', 'The resistor reads open'],
    ['to its housing', { toHousing: '80k' }, 'no-go', 'A path from the resistor to its housing'],
    ['no diode', { upperConducting: 'OL' }, 'undecided', 'B to DC+ conducts neither way'],
    ['begun', { insulation: '', lowerBlocking: '' }, 'undecided', 'Still missing: its insulation test and the chopper'],
  ]);
});

describe('DC bus and input', () => {
  const of = (row: string, text: string) =>
    Object.fromEntries(['L1', 'L2', 'L3'].map((line) => [`${row}${line}`, text]));
  const sound = {
    ...{ busVoltage: '0.03 V', supplyLeads: 'off', others: 'off', ...of('fuse', '0.2 Ω') },
    ...{ ...of('plusConducting', '0.46'), ...of('plusBlocking', 'OL') },
    ...{ ...of('minusConducting', '0.46'), ...of('minusBlocking', 'OL') },
    ...{ linkConducting: '0.85', linkBlocking: 'OL', climb: 'climbs', precharge: 'reached' },
    ...{ prechargePlate: '47 Ω', prechargeOhms: '47.8 Ω' },
  };
  const shorted = { plusConductingL2: '0.002 V', plusBlockingL2: '0.002 V' };
  says(inputCircuit, sound, [
    ['sound', {}, 'go', 'Fuses, rectifier, bus and precharge read as they should'],
    ['charged', { busVoltage: '320 V' }, 'stop', 'Up to 320 V on the bus'],
    ['shorted', shorted, 'no-go', 'Short read both ways, L2 to DC+'],
    ['a fuse', { fuseL2: 'OL' }, 'no-go', 'The fuse of L2 is open'],
    ['both', { ...shorted, fuseL2: 'OL' }, 'no-go', 'Short read both ways, L2 to DC+; the fuse of L2 is open'],
    ['none fitted', { precharge: 'none' }, 'undecided', 'What limits the current at power-on is not judged'],
    ['out of reach', { precharge: 'inside' }, 'undecided', 'The precharge is out of reach, and can blow fuses'],
    ['begun', { linkBlocking: '', fuseL1: '' }, 'undecided', 'Still missing: the fuses and DC+ to DC−'],
  ]);
});

describe('PE and cores by length', () => {
  const sound = {
    reading: '0.55 Ω',
    metres: '40 m',
    section: '1.5',
    way: 'pe',
    end: 'off',
    meter: 'continuity-tester',
  };
  const high = 'More than length, cross-section and contacts explain';
  says(coreResistance, sound, [
    ['sound', {}, 'go', 'It reads what length and cross-section let expect'],
    ['on at both ends', { end: 'on' }, 'undecided', 'Both ends are on: other paths are measured with it'],
    ['too much', { reading: '3 Ω' }, 'no-go', high],
    ['open', { reading: 'OL' }, 'no-go', 'It reads open'],
    ['too little', { reading: '0.1 Ω' }, 'undecided', 'Less than the copper alone has: another path, or other data'],
    [
      'begun',
      { metres: '', end: '' },
      'undecided',
      'Still missing: whether one end is off and length and cross-section',
    ],
  ]);
});

describe('trace of a trip', () => {
  const kept = (computed: Computed) => {
    const trace = computedTrace(computed);
    return writeKeptTrace({
      figures: measureTrace(trace),
      plot: plotSeries(trace),
      remarks: { rowsWithoutCurrent: 0 },
    });
  };
  const moving = { speed: () => 1500, bus: () => 560, polePairs: 4 };
  const dips = { ...moving, bus: (t: number) => (t > 0.37 ? 380 : 560), currents: turning(10, 100) };
  const sound = {
    trace: kept({ ...moving, currents: turning(25, 100) }),
    ...{ inductance: '12 mH', tripCurrent: '30 A', stored: 'raw', sensors: 'three', polePairs: '4' },
  };
  const open = (t: number): [number, number, number] => {
    const current = 10 * Math.cos(2 * Math.PI * 100 * t);
    return t > 0.3 ? [current, 0, -current] : turning(10, 100)(t);
  };
  says(tripTrace, sound, [
    ['nothing stands out', {}, 'undecided', 'No statement: nothing in this trace stands out'],
    ['no file', { trace: '' }, 'undecided', 'Still missing: the file of the recording'],
    [
      'a supply that dips',
      { trace: kept(dips) },
      'undecided',
      'Speaks for supply or braking circuit, or current sensing',
    ],
    [
      'a core that opens',
      { trace: kept({ ...moving, currents: open }) },
      'undecided',
      'Speaks for an open core, or current sensing, or a path to earth',
    ],
  ]);
});

describe('cable while it bends', () => {
  const quiet = (loop: string, which = '') => ({
    ...{ [`${loop}Rest${which}`]: '0.42 Ω', [`${loop}Low${which}`]: '0.40 Ω' },
    ...{ [`${loop}High${which}`]: '0.45 Ω', [`${loop}After${which}`]: '0.43 Ω' },
  });
  const position = (place: number) => ({ [`P${place}U`]: '>2 GΩ', [`P${place}V`]: '>2 GΩ', [`P${place}W`]: '>2 GΩ' });
  const sound = {
    ...{ end: 'off', meter: 'hold', moved: 'twice', screen: 'none', idle: 'none' },
    ...{ ...quiet('UV'), ...quiet('VW'), ...quiet('WU'), ...quiet('PE') },
    ...{ whileOn: 'at-rest', testVoltage: '500 V', ...position(1), ...position(2), ...position(3) },
  };
  const once = { UVHigh: 'OL', WUHigh: 'OL' };
  const second = { ...quiet('UV', '2'), ...quiet('VW', '2'), ...quiet('WU', '2') };
  const twice = { ...once, ...second, UVHigh2: '80 Ω', WUHigh2: 'OL' };
  says(bendTest, sound, [
    ['quiet', {}, 'go', 'Nothing opened or leaked while it was bent by hand'],
    ['once', once, 'no-go', 'Core U jumped once while bent'],
    ['twice', { ...twice, movedAgain: 'cable' }, 'no-go', 'Core U opens when bent, twice'],
    ['one loop', { UVHigh: 'OL' }, 'no-go', 'U to V jumped once while bent'],
    ['tips moved', { UVAfter: '3 Ω' }, 'undecided', 'Before and after do not agree: U to V'],
    ['a leak', { P2V: '0.4 MΩ' }, 'no-go', 'V leaks in one position, not proven yet'],
    ['back again', { P2V: '0.4 MΩ', badAgainV: '0.5 MΩ' }, 'no-go', 'V leaks when bent, twice'],
    ['a tester', { meter: 'tester' }, 'stop', 'A test voltage on a cable that is moved'],
    ['moved under voltage', { whileOn: 'moved' }, 'stop', 'The cable was moved while the test voltage was on'],
    ['by eye', { meter: 'watched' }, 'undecided', 'By eye nothing passes'],
    [
      'begun',
      { PEHigh: '', screen: '' },
      'undecided',
      'Still missing: whether it has a screen and readings of PE to U',
    ],
  ]);
});
