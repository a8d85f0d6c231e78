import { diodeConductance, diodeCurrent, limitStep } from './diode-law.ts';
import { Equations, solveLinear } from './linear-equations.ts';
import { type Element, type Gap, nodeIndex, resistor } from './network.ts';

/** Conductance of every node to ground in A/V, so that a floating part has a voltage: 100 TΩ, beyond any instrument. */
const leakOfNodes = 1e-14;

const maxRounds = 200;
/**
 * Newton's iteration has converged when no diode's voltage changes by more than this, in volts: a thousandth of its
 * slope voltage, and the last step leaves far less. With a tester of 500 V, rounding prevents a smaller value.
 */
const stillVolts = 2e-5;
/** The same as a share of the voltage; a floating node is not known better. */
const stillShare = 1e-6;

/**
 * At nodes that only blocking diodes connect to the rest, rounding moves the solution for ever, by less than this share of
 * the highest voltage. After `roundsToSettle` that counts as still: 5 mV for a tester of 500 V, 30 µV for a multimeter.
 */
const roundingShare = 1e-5;
/**
 * Nor is a change of a diode's current by less than this, in amperes, anything but rounding then: it is what the leak of
 * a node carries at 1 V, and moves a multimeter of 10 MΩ by 0.1 µV.
 */
const roundingAmperes = 1e-14;
const roundsToSettle = 100;

/** Voltage of a node against ground, in volts; 0 for a node that nothing is connected to. */
export type Voltages = (node: string) => number;

/** What counts as no change of a diode between two rounds. */
interface Still {
  volts: number;
  amperes: number;
}

interface Junction {
  anode: number;
  cathode: number;
  saturation: number;
  slope: number;
  forward: number;
}

/**
 * Voltages of a network at rest, by nodal analysis (Kirchhoff's current law at every node) with Newton's iteration for
 * the diodes. A capacitor at rest carries no current. Gaps begin open; one that breaks down stays closed, so that a
 * round ends after at most as many solutions as there are gaps. Throws if the iteration does not converge.
 */
export function operatingPoint(elements: readonly Element[]): Voltages {
  if (elements.every(({ kind }) => kind !== 'gap')) return withoutGaps(elements);
  const broken = new Set<Gap>();
  for (;;) {
    const volts = withoutGaps(
      elements.flatMap((element): Element[] => {
        if (element.kind !== 'gap') return [element];
        return broken.has(element) ? [resistor(element.a, element.b, element.ohms)] : [];
      }),
    );
    const more = elements.filter(
      (element): element is Gap =>
        element.kind === 'gap' &&
        !broken.has(element) &&
        Math.abs(volts(element.a) - volts(element.b)) >= element.volts,
    );
    if (more.length === 0) return volts;
    for (const gap of more) broken.add(gap);
  }
}

function withoutGaps(elements: readonly Element[]): Voltages {
  const index = nodeIndex(elements);
  const position = (node: string) => index.get(node) ?? -1;
  const linear = linearPart(elements, index.size, position);
  const junctions = elements.flatMap((element): Junction[] => {
    if (element.kind !== 'diode') return [];
    const { anode, cathode, saturation, slope } = element;
    return [{ anode: position(anode), cathode: position(cathode), saturation, slope, forward: 0 }];
  });
  for (let round = 0; round < maxRounds; round += 1) {
    const equations = linear.copy();
    for (const junction of junctions) addJunction(equations, junction);
    const solution = solveLinear(equations);
    const still: Still =
      round < roundsToSettle
        ? { volts: stillVolts, amperes: 0 }
        : { volts: Math.max(stillVolts, roundingShare * solution.reduce(highest, 0)), amperes: roundingAmperes };
    const settled = junctions.map((junction) => settle(junction, solution, still));
    if (settled.every(Boolean)) return (node) => solution[position(node)] ?? 0;
  }
  throw new Error('the diodes of the network do not settle');
}

function linearPart(elements: readonly Element[], size: number, position: (node: string) => number): Equations {
  const equations = new Equations(size);
  for (let node = 0; node < size; node += 1) addConductance(equations, node, -1, leakOfNodes);
  for (const element of elements) {
    if (element.kind !== 'resistor' && element.kind !== 'source') continue;
    const [a, b] = [position(element.a), position(element.b)];
    addConductance(equations, a, b, 1 / element.ohms);
    if (element.kind === 'source') addCurrent(equations, b, a, element.volts / element.ohms);
  }
  return equations;
}

/** The tangent of the diode's curve at its present voltage: a conductance and a current beside it. */
function addJunction(equations: Equations, { anode, cathode, saturation, slope, forward }: Junction): void {
  const conductance = diodeConductance(forward, saturation, slope);
  addConductance(equations, anode, cathode, conductance);
  addCurrent(equations, anode, cathode, diodeCurrent(forward, saturation, slope) - conductance * forward);
}

const highest = (most: number, volts: number): number => Math.max(most, Math.abs(volts));

/** Moves the diode to the solved voltage, as far as `limitStep` allows; true if it was `still` there already. */
function settle(junction: Junction, solution: Float64Array, still: Still): boolean {
  const { anode, cathode, saturation, slope, forward } = junction;
  const wanted = (solution[anode] ?? 0) - (solution[cathode] ?? 0);
  junction.forward = limitStep(wanted, forward, saturation, slope);
  // Far in reverse only the saturation current flows, whatever the voltage: nothing is left to settle.
  if (wanted < -40 * slope && forward < -40 * slope) return true;
  if (Math.abs(wanted - forward) <= still.volts + stillShare * Math.abs(wanted)) return true;
  const moved = diodeCurrent(wanted, saturation, slope) - diodeCurrent(forward, saturation, slope);
  return Math.abs(moved) < still.amperes;
}

function addConductance(equations: Equations, a: number, b: number, conductance: number): void {
  equations.add(a, a, conductance);
  equations.add(b, b, conductance);
  equations.add(a, b, -conductance);
  equations.add(b, a, -conductance);
}

/** A current in amperes that leaves `from` and enters `to`. */
function addCurrent(equations: Equations, from: number, to: number, amperes: number): void {
  equations.add(from, equations.size, -amperes);
  equations.add(to, equations.size, amperes);
}
