import { phases } from '../../../src/kernel/electrics/phases.ts';
import { seeded } from '../../../src/kernel/random.ts';
import type { LeakPath, SeriesOhms } from '../../../src/practice/simulator/axis-defects.ts';
import { axisNetwork } from '../../../src/practice/simulator/axis-network.ts';
import {
  type AxisState,
  asFound,
  bondedExcept,
  cableFree,
  idleCores,
  leadsOff,
} from '../../../src/practice/simulator/axis-state.ts';
import { busCapacitors } from '../../../src/practice/simulator/drive-network.ts';
import { faultedAxis } from '../../../src/practice/simulator/faulted-axis.ts';
import { insulationTester, type Range } from '../../../src/practice/simulator/instruments.ts';
import type { Element } from '../../../src/practice/simulator/network.ts';
import { type AxisParameters, drawAxis } from '../../../src/practice/simulator/parameters.ts';
import { underTest } from '../../../src/practice/simulator/ranging.ts';
import type { Asked, RestCase } from './netlist.ts';

/** Networks that only the field has: other drives and meters, all cores of a cable, contacts, neighbours. */

const celsius = 20;
const found = asFound(celsius, celsius);
const alike = (ohms: number) => ({ U: ohms, V: ohms, W: ohms });

function axisOf(parameters: Partial<AxisParameters>, bad: { leaks?: LeakPath[]; contacts?: SeriesOhms[] } = {}) {
  const random = seeded(77);
  return { ...faultedAxis('nuisance', { ...drawAxis(random), ...parameters }, random), ...bad };
}

type Axis = ReturnType<typeof axisOf>;

const ohmmeter = (sourceVolts: number, sourceOhms: number): Range => ({ fullScale: 720e3, sourceVolts, sourceOhms });
const tester = insulationTester(500, 14e9, 9).ranges[0] as Range;

/** Both rails to each terminal, with plus on red and with minus on red, and from rail to rail. */
function bridge(name: string, axis: Axis, meters: readonly number[] = [0.3, 3, -0.5]): RestCase {
  const network = axisNetwork(axis, leadsOff(found));
  const asked = meters.flatMap((volts, meter) =>
    phases.flatMap((phase): Asked[] =>
      [
        { name: `plus${phase}`, red: 'DC+', black: `drive.${phase}` },
        { name: `minus${phase}`, red: `drive.${phase}`, black: 'DC-' },
      ].map((leads) => ({
        ...leads,
        name: `${leads.name.toLowerCase()}${meter}`,
        elements: underTest(network, leads, ohmmeter(volts, 100e3)),
      })),
    ),
  );
  return { name: `field bridge ${name}`, celsius, asked };
}

function read(name: string, axis: Axis, state: AxisState, red: string, black: string, range: Range): RestCase {
  const elements = underTest(axisNetwork(axis, state, 60), { red, black }, range);
  return { name: `field ${name}`, celsius, asked: [{ name: 'reading', elements, red, black }] };
}

const toCore: LeakPath[] = [{ a: 'cable.U', b: 'cable.sensor+', ohms: 5e3 }];
const toBar = cableFree({ ...found, idleCores: 'to-pe' });
const cored = axisOf({ idleCores, oneCable: true }, { leaks: toCore });
const gap = axisOf({}, { leaks: [{ a: 'cable.U', b: 'ground', ohms: 5e6, condition: 'above-200V' }] });
const neighbour = axisOf({
  neighbour: { windingOhms: 1.6, frameInsulationOhms: 2e9, gravityLoaded: false },
  brakingOhms: 40,
});
const open = { upperOhms: alike(1e9), lowerOhms: alike(1e9) };
const series = axisOf({ ...open, balance: { upperOhms: 150e3, lowerOhms: 1e9 } });
const filtered = axisOf({ filterOhms: 4.7e6, cableKelvinPerHalving: 7, insulationOhmMetres: 8e9 });
const contact = axisOf({}, { contacts: [{ core: 'U', place: 'mated', ohms: 0.4 }] });

export const fieldCases: RestCase[] = [
  bridge('alike', axisOf({ upperOhms: alike(475e3), lowerOhms: alike(475e3) })),
  bridge('open', axisOf(open)),
  bridge('unlike', axisOf({ upperOhms: alike(900e3), lowerOhms: { U: 39e3, V: 47e3, W: 47e3 } })),
  bridge('series capacitors', series),
  // At 3 V ngspice does not converge on all of it.
  bridge('neighbour and braking resistor', neighbour, [0.3, 1.5, -0.5]),
  read(
    'core to sensor core, bonded U',
    cored,
    { ...toBar, jumpers: bondedExcept('U') },
    'cable.drive.U',
    'ground',
    tester,
  ),
  read(
    'core to sensor core, bonded V',
    cored,
    { ...toBar, jumpers: bondedExcept('V') },
    'cable.drive.V',
    'ground',
    tester,
  ),
  read(
    'core to sensor core, joined',
    cored,
    { ...leadsOff(found), idleCores: 'to-pe' },
    'cable.drive.V',
    'ground',
    tester,
  ),
  read('core to sensor core, hanging free', cored, leadsOff(found), 'cable.drive.V', 'ground', tester),
  read('gap, tester', gap, cableFree(found), 'cable.drive.U', 'ground', tester),
  read('gap, multimeter', gap, cableFree(found), 'cable.drive.U', 'ground', ohmmeter(0.5, 10e6)),
  read('filter and PVC', filtered, cableFree({ ...found, airCelsius: 30 }), 'cable.drive.W', 'ground', tester),
  read('contact', contact, leadsOff(found), 'cable.drive.U', 'cable.drive.V', ohmmeter(5, 50)),
  read('braking resistor on the drive', neighbour, leadsOff(found), 'braking.plus', 'ground', ohmmeter(0.5, 10e6)),
];

/** The voltage of a capacitor of the bus in time, while it charges from a meter or discharges by itself. */
interface ChargeCase {
  name: string;
  celsius: number;
  elements: Element[];
  seconds: readonly number[];
  position: number;
}

function charging(
  name: string,
  axis: Axis,
  state: AxisState,
  meter: [volts: number, ohms: number] | undefined,
): ChargeCase[] {
  const network = [
    ...axisNetwork(axis, state).filter(({ kind }) => kind !== 'capacitor'),
    ...busCapacitors(axis.parameters, state),
  ];
  const elements = meter ? underTest(network, { red: 'DC+', black: 'drive.U' }, ohmmeter(...meter)) : network;
  return busCapacitors(axis.parameters, state).map((_, position) => ({
    name: `charge ${name} ${position}`,
    celsius,
    elements,
    seconds: [1, 10, 60, 240],
    position,
  }));
}

const off = leadsOff(found);
const design = axisOf({ busFarads: 235e-6, bleedOhms: 470e3, upperOhms: alike(900e3), lowerOhms: alike(47e3) });

export const chargeCases: ChargeCase[] = [
  ...charging('from half a volt', design, off, [0.5, 1e6]),
  ...charging('from three volts', design, off, [3, 10e3]),
  ...charging('the wrong way round', design, off, [-0.5, 100e3]),
  ...charging('on what is left', design, { ...off, busVolts: 0.3 }, [0.5, 100e3]),
  ...charging('two in series, one resistor open', series, { ...off, busVolts: 565 }, undefined),
];
