import type { Rail } from '../../../src/calculators/bridge/rule/switch-position.ts';
import { phases } from '../../../src/kernel/electrics/phases.ts';
import { seeded } from '../../../src/kernel/random.ts';
import { axisNetwork } from '../../../src/practice/simulator/axis-network.ts';
import { asFound, leadsOff } from '../../../src/practice/simulator/axis-state.ts';
import { faultedAxis } from '../../../src/practice/simulator/faulted-axis.ts';
import { multimeter, type Range } from '../../../src/practice/simulator/instruments.ts';
import { drawAxis } from '../../../src/practice/simulator/parameters.ts';
import { underTest } from '../../../src/practice/simulator/ranging.ts';
import { type Asked, restDeck } from '../simulator-ngspice/netlist.ts';
import { simulate } from '../simulator-ngspice/record.ts';

/** A path across one switch, such as `plusU`, in Ω; absent for a sound stage. */
interface DiodeCase {
  name: string;
  across?: { at: string; ohms: number };
}

const positions = (['plus', 'minus'] as Rail[]).flatMap((rail) => phases.map((phase) => rail + phase));

export const diodeCases: DiodeCase[] = [
  { name: 'sound' },
  ...positions.map((at) => ({ name: `short ${at}`, across: { at, ohms: 0.8 } })),
  { name: 'leak of 1.5 kΩ at minusV', across: { at: 'minusV', ohms: 1500 } },
  { name: 'leak of 20 kΩ at plusW', across: { at: 'plusW', ohms: 20e3 } },
];

export const celsius = 20;
export const diodeRange = multimeter.diode.ranges[0] as Range;

/** The four hook-ups of a phase, in lower case as ngspice writes names. */
export function hookUps(phase: string): { name: string; red: string; black: string }[] {
  const terminal = `drive.${phase}`;
  const named = (rail: string, way: string) => `${rail}${way}${phase}`.toLowerCase();
  return [
    { name: named('plus', 'forward'), red: terminal, black: 'DC+' },
    { name: named('plus', 'reverse'), red: 'DC+', black: terminal },
    { name: named('minus', 'forward'), red: 'DC-', black: terminal },
    { name: named('minus', 'reverse'), red: terminal, black: 'DC-' },
  ];
}

export function askedOf({ across }: DiodeCase): Asked[] {
  const random = seeded(5);
  const sound = faultedAxis('nuisance', drawAxis(random), random);
  const rail = across?.at.startsWith('plus') ? 'DC+' : 'DC-';
  const leaks = across === undefined ? [] : [{ a: rail, b: `drive.${across.at.slice(-1)}`, ohms: across.ohms }];
  const network = axisNetwork({ ...sound, leaks }, leadsOff(asFound(celsius, celsius)));
  return phases.flatMap(hookUps).map((leads) => ({ ...leads, elements: underTest(network, leads, diodeRange) }));
}

/**
 * Volts of the twelve readings by name, computed by ngspice. Without the picoampere tolerances of the insulation decks:
 * with a milliampere through a short, ngspice would not converge.
 */
export function simulateDiodeCase(one: DiodeCase): Record<string, number> {
  const deck = restDeck(one.name, celsius, askedOf(one));
  return simulate(deck.replace('abstol=1e-18', 'abstol=1e-15').replace('vntol=1e-10', 'vntol=1e-8'));
}
