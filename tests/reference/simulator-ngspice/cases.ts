import { phases } from '../../../src/kernel/electrics/phases.ts';
import { seeded } from '../../../src/kernel/random.ts';
import { axisNetwork } from '../../../src/practice/simulator/axis-network.ts';
import { type AxisState, asFound, cableFree, leadsOff } from '../../../src/practice/simulator/axis-state.ts';
import { holding } from '../../../src/practice/simulator/discharge.ts';
import { type FaultedAxis, faultedAxis } from '../../../src/practice/simulator/faulted-axis.ts';
import { insulationTester, multimeter, type Range } from '../../../src/practice/simulator/instruments.ts';
import { drawAxis } from '../../../src/practice/simulator/parameters.ts';
import { type HookUp, underTest } from '../../../src/practice/simulator/ranging.ts';
import { fieldCases } from './field-cases.ts';
import type { Asked, RestCase } from './netlist.ts';

interface DischargeCase {
  name: string;
  axis: FaultedAxis;
  state: AxisState;
}

export const dischargeSeconds = [10, 60, 180];

const axisWith = (fault: string): FaultedAxis => {
  const random = seeded(fault.length * 7919 + 1);
  return faultedAxis(fault, drawAxis(random), random);
};

/** Cold, usual and warm, so that the diodes are compared at more than one temperature. */
const temperatures = [5, 20, 35];
const celsiusOf = (position: number): number => temperatures[position % temperatures.length] as number;

const named = (...parts: string[]) =>
  parts
    .join('')
    .replaceAll(/[^a-zA-Z0-9]/g, '')
    .toLowerCase();

function bridgeCase(fault: string, position: number): RestCase {
  const celsius = celsiusOf(position);
  const network = axisNetwork(axisWith(fault), leadsOff(asFound(celsius, celsius)));
  const [kilohms, megohms] = [multimeter.ohms.ranges[2], multimeter.ohms.ranges[3]] as [Range, Range];
  const ask = (name: string, leads: HookUp, range: Range): Asked => ({
    name,
    elements: underTest(network, leads, range),
    ...leads,
  });
  const asked = phases.flatMap((phase) => {
    const terminal = `drive.${phase}`;
    return [
      ask(named('plus', phase), { red: 'DC+', black: terminal }, megohms),
      ask(named('minus', phase), { red: terminal, black: 'DC-' }, kilohms),
      ask(named('forward', phase), { red: 'DC-', black: terminal }, multimeter.diode.ranges[0] as Range),
    ];
  });
  return { name: `bridge ${fault}`, celsius, asked };
}

function insulationCase(fault: string, position: number): RestCase {
  const celsius = celsiusOf(position);
  const axis = axisWith(fault);
  const found = asFound(celsius, celsius);
  const range = insulationTester(500, 14e9, 9).ranges[0] as Range;
  const ask = (name: string, state: AxisState, leads: HookUp): Asked => ({
    name,
    elements: underTest(axisNetwork(axis, state, 60), leads, range),
    ...leads,
  });
  const asked = phases.flatMap((phase) => {
    const core = { red: `cable.drive.${phase}`, black: 'ground' };
    const others = ['PE', 'screen', ...phases.filter((other) => other !== phase)];
    const bonded = {
      ...cableFree(found),
      jumpers: others.map((other): [string, string] => [`cable.drive.${other}`, 'ground']),
    };
    return [
      ask(named('joined', phase), leadsOff(found), core),
      ask(named('cable', phase), cableFree(found), core),
      ask(named('bonded', phase), bonded, core),
      ask(named('motor', phase), cableFree(found), { red: `motor.${phase}`, black: 'motor.frame' }),
    ];
  });
  return { name: `insulation ${fault}`, celsius, asked };
}

/** Leads on a live bus and through the connected drive: what a wrong hook-up reads. */
function wrongCase(name: string, change: (state: AxisState) => AxisState, leads: HookUp, range: Range): RestCase {
  const celsius = 20;
  const network = holding(axisNetwork(axisWith('nuisance'), change(asFound(celsius, celsius)), 60));
  return {
    name: `wrong ${name}`,
    celsius,
    asked: [{ name: 'reading', elements: underTest(network, leads, range), ...leads }],
  };
}

const kilohms = multimeter.ohms.ranges[2] as Range;
const tester = insulationTester(500, 14e9, 9).ranges[0] as Range;

export const restCases: RestCase[] = [
  ...[
    'nuisance',
    'short-upper-U',
    'short-lower-V',
    'leaky-upper-W',
    'leaky-lower-U',
    'leaky-upper-V',
    'short-lower-W',
  ].map(bridgeCase),
  ...[
    'nuisance',
    'core-U-ground',
    'core-V-PE',
    'core-W-screen-high',
    'core-U-V-high',
    'frame-U',
    'frame-W-high',
    'motor-wet',
    'connector-wet',
    'pe-broken',
    'motor-took-cable',
    'motor-and-cable-high',
    'all-three-high',
  ].map(insulationCase),
  wrongCase('live-bus', (state) => ({ ...state, supply: true }), { red: 'DC+', black: 'drive.U' }, kilohms),
  wrongCase('charged-bus', (state) => ({ ...state, busVolts: 320 }), { red: 'drive.V', black: 'DC-' }, kilohms),
  wrongCase('through-the-drive', (state) => state, { red: 'motor.U', black: 'ground' }, tester),
  wrongCase('bridge-with-motor', (state) => state, { red: 'drive.U', black: 'DC-' }, kilohms),
];

restCases.push(...fieldCases);

export const dischargeCases: DischargeCase[] = [
  'nuisance',
  'leaky-upper-V',
  'leaky-lower-W',
  'short-upper-U',
  'core-U-ground',
  'frame-U',
].map((fault) => ({ name: `discharge ${fault}`, axis: axisWith(fault), state: { ...asFound(20, 20), busVolts: 565 } }));
