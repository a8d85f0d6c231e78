import { CaseRun } from '../../src/practice/case/case-run.ts';
import { drawMachine } from '../../src/practice/case/draw-machine.ts';
import { feedback } from '../../src/practice/case/feedback.ts';
import type { Mode } from '../../src/practice/simulator/measure.ts';
import { type Bench, milliseconds } from './measured.ts';

const windingCelsius = 22;
/** Enough measurements at once to exceed the noise of the clock. */
const times = 100;

async function one(mode: Mode, red: string, black: string): Promise<number> {
  const machine = drawMachine('all-three', 7, windingCelsius);
  const many = () => {
    for (let count = 0; count < times; count++) machine.measure(mode, red, black, { discharge: true });
  };
  return (await milliseconds(many)) / times;
}

/** 5 ms for a measurement, so that it is not noticeable in a browser four times slower. */
export const bench: Bench = {
  name: 'The practice: simulated measurements, and the feedback at the end',
  run: async () => {
    const idle = new CaseRun({ fault: 'all-three', seed: 7, windingCelsius });
    return [
      { what: 'DC volts across the bus', value: await one('volts', 'DC+', 'DC-'), unit: 'ms', budget: 5 },
      { what: 'resistance, rail to terminal', value: await one('ohms', 'DC+', 'drive.U'), unit: 'ms', budget: 5 },
      { what: 'diode test', value: await one('diode', 'DC-', 'drive.U'), unit: 'ms', budget: 5 },
      { what: 'insulation, joined', value: await one('insulation', 'cable.drive.U', 'ground'), unit: 'ms', budget: 5 },
      {
        what: 'feedback, the guide’s own visit with it',
        value: await milliseconds(() => feedback(idle, { kind: 'undecided' })),
        unit: 'ms',
      },
    ];
  },
};
