import { inOhms } from '../../../kernel/reading/format-reading.ts';
import { figureOf } from '../../../kernel/reading/reading.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { JoinedDrawing, microamperesOf } from './JoinedDrawing.tsx';
import { type Readings, readings } from './model.ts';

const stops = [2e6, 5e6, 10e6, 20e6, 50e6, 100e6, 200e6, 500e6, 1e9];

export const figure: SimulatedFigure<Readings> = {
  id: 'joined-reading',
  title: 'Cable and motor alone and joined: their currents add',
  caption:
    'Change the cable and the motor. The joined reading is below both, and the lower of the two decides nearly all of it.',
  model: 'cable and motor of the practice, dry, at 20 °C; a tester of 500 V without error, read after one minute.',
  controls: [
    { id: 'cable', label: 'Insulation of the cable', stops: stops.map(inOhms), start: 7, as: 'slider' },
    { id: 'motor', label: 'Insulation of the motor', stops: stops.map(inOhms), start: 3, as: 'slider' },
  ],
  compute: ([cable = 0, motor = 0]) => readings(stops[cable] ?? 1e9, stops[motor] ?? 1e9),
  values: ({ cable, motor, joined }) => [
    ['Cable alone', cable.text],
    ['Motor alone', motor.text],
    ['Joined', joined.text],
  ],
  says: (result) => {
    const [cable, motor, joined] = [result.cable, result.motor, result.joined].map(microamperesOf) as [
      number,
      number,
      number,
    ];
    const lower = (figureOf(result.cable.reading) ?? 0) < (figureOf(result.motor.reading) ?? 0) ? 'cable' : 'motor';
    const share = Math.round((100 * Math.max(cable, motor)) / (cable + motor));
    const whose =
      share > 55 ? `${share} % of it goes through the ${lower}.` : 'Cable and motor share it about equally.';
    return `At 500 V the joined current is ${joined.toFixed(1)} µA. ${whose}`;
  },
  Drawing: JoinedDrawing,
  height: 262,
  rows: [
    [7, 3],
    [7, 6],
    [7, 7],
    [3, 3],
    [3, 7],
    [0, 7],
  ],
};
