import { absorption } from './absorption/about.ts';
import { bendTest } from './bend-test/about.ts';
import { brake } from './brake/about.ts';
import { brakingCircuit } from './braking-circuit/about.ts';
import { bridge } from './bridge/about.ts';
import { bridgeDiode } from './bridge-diode/about.ts';
import { cableLength } from './cable-length/about.ts';
import { coreResistanceAbout } from './core-resistance/about.ts';
import { discharge } from './discharge/about.ts';
import { inputCircuit } from './input-circuit/about.ts';
import { insulation } from './insulation/about.ts';
import { isolation } from './isolation/about.ts';
import { testVoltage } from './test-voltage/about.ts';
import { trend } from './trend/about.ts';
import { tripTrace } from './trip-trace/about.ts';
import { winding } from './winding/about.ts';

/** Every calculator, in the order in which the site lists them. The rest of each is found in its folder. */
export const calculators = [
  bridge,
  bridgeDiode,
  insulation,
  isolation,
  winding,
  discharge,
  absorption,
  testVoltage,
  cableLength,
  trend,
  brake,
  brakingCircuit,
  inputCircuit,
  coreResistanceAbout,
  bendTest,
  tripTrace,
] as const;

export type CalculatorName = (typeof calculators)[number]['name'];

export const calculatorNames: readonly CalculatorName[] = calculators.map(({ name }) => name);
