import { verdictWords } from '../../../kernel/form/verdict-words.ts';
import { inOhms } from '../../../kernel/reading/format-reading.ts';
import type { SimulatedFigure } from '../simulated-figure.ts';
import { HeatDrawing } from './HeatDrawing.tsx';
import { limit, reference, type WarmReading, warmReading } from './model.ts';

const insulations = [20e6, 80e6, 200e6, 800e6];
const kelvins = [9, 10, 11];
const temperatures = Array.from({ length: 17 }, (_, step) => step * 5);

export const figure: SimulatedFigure<WarmReading> = {
  id: 'winding-heat',
  title: 'The reading of one motor and the corrected limit, by winding temperature',
  caption:
    'Warm the winding. The reading falls although nothing in the motor changes. Between the two lines temperature could change the answer, so it is undecided.',
  model:
    'the motor of the practice, alone and dry, whose insulation resistance halves for each rise by the chosen kelvins; a tester of 500 V without error.',
  controls: [
    {
      id: 'temperature',
      label: 'Winding temperature',
      stops: temperatures.map((at) => `${at} °C`),
      start: 10,
      as: 'slider',
    },
    {
      id: 'insulation',
      label: `Insulation at ${reference} °C`,
      stops: insulations.map(inOhms),
      start: 2,
      as: 'choice',
    },
    { id: 'kelvin', label: 'Halves for each', stops: kelvins.map((kelvin) => `${kelvin} K`), start: 1, as: 'choice' },
  ],
  compute: ([temperature = 4, insulation = 2, kelvin = 1]) =>
    warmReading(insulations[insulation] ?? 0, kelvins[kelvin] ?? 10, temperatures[temperature] ?? reference),
  values: ({ reading, carried, limitHere }) => [
    ['The tester shows', reading.text],
    [`Carried to ${reference} °C`, `${reading.reading.kind === 'over' ? '> ' : ''}${inOhms(carried)}`],
    ['Limit on the reading', inOhms(limit)],
    ['Limit carried to the winding', inOhms(limitHere)],
  ],
  says: ({ celsius, verdict }) => {
    const answer = `After a trip the answer is: ${verdictWords[verdict].toLowerCase()}.`;
    if (verdict !== 'undecided') return answer;
    if (celsius > reference) return `${answer} Let the winding cool, then test again.`;
    return celsius < reference ? `${answer} Let the winding warm up, then test again.` : answer;
  },
  Drawing: HeatDrawing,
  height: 460,
  rows: [0, 4, 8, 12, 16].flatMap((temperature) => [1, 2].map((insulation) => [temperature, insulation, 1])),
};
