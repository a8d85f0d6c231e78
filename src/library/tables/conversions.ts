import { type Conductor, conductors, temperatureFactor } from '../../kernel/electrics/conductor-temperature.ts';
import type { CorrectionMethod } from '../../kernel/electrics/correction-validity.ts';
import { dewPoint } from '../../kernel/electrics/dew-point.ts';
import { correctionFactor } from '../../kernel/electrics/temperature-correction.ts';
import { type LimitId, limitRange, limitValue } from '../../kernel/limits.ts';

/** A table computed from published formulas. A cell without a figure is outside the formula's range. */
export interface Conversion {
  /** Part of the published address of the table and of each row. */
  id: string;
  title: string;
  about: string;
  /** The limits behind the formulas, in content/limits. */
  limits: LimitId[];
  /** Heading of the first column, then of the others. */
  head: [string, ...string[]];
  rows: { at: number; label: string; cells: string[] }[];
}

const celsius = (value: number) => `${String(value).replace('-', '−')}\u00a0°C`;
const steps = (from: number, to: number, by: number) =>
  Array.from({ length: Math.floor((to - from) / by) + 1 }, (_, i) => from + i * by);
const shown = (value: number | undefined, digits: number) => {
  if (value === undefined) return '';
  // No trailing zeros: they would claim an accuracy that the formula does not have.
  return String(Number(value.toPrecision(digits)));
};

function insulationFactors(): Conversion {
  const routine = limitValue('reference-temperature-routine');
  const afterTrip = limitValue('reference-temperature-after-trip');
  const columns: [CorrectionMethod, number, string][] = [
    ['halving', routine, 'Halving rule'],
    ['thermosetting', routine, 'Thermosetting'],
    ['halving', afterTrip, 'Halving rule'],
    ['table', afterTrip, 'Table, solid insulation'],
  ];
  const { from, to } = limitRange('halving-validity');
  return {
    id: 'insulation',
    title: 'Insulation resistance by winding temperature',
    about:
      'What a reading is multiplied by. The methods differ, so write down which you took. After a trip no factor makes a bad reading good: see the article on temperature.',
    limits: ['halving-rule', 'halving-validity', 'thermosetting-cool', 'thermosetting-hot', 'solid-insulation-to-20'],
    head: ['Winding', ...columns.map(([, reference, name]) => `${name}, to ${celsius(reference)}`)],
    rows: steps(from, to, 5).map((at) => ({
      at,
      label: celsius(at),
      cells: columns.map(([method, reference]) => shown(correctionFactor(method, at, reference), 3)),
    })),
  };
}

function dewPoints(): Conversion {
  const humidities = steps(30, 100, 10);
  return {
    id: 'dew-point',
    title: 'Dew point of the air, in °C',
    about:
      'By air temperature and relative humidity. A winding at or below the dew point is wet: dry it before you test.',
    limits: ['magnus', 'magnus-validity'],
    head: ['Air', ...humidities.map((humidity) => `${humidity}\u00a0%`)],
    rows: steps(0, 45, 5).map((at) => ({
      at,
      label: celsius(at),
      cells: humidities.map((humidity) => dewPoint(at, humidity)?.toFixed(1).replace('-', '−') ?? ''),
    })),
  };
}

const conductorNames: Record<Conductor, string> = {
  copper: 'Copper',
  'copper-iec': 'Copper, machines standard',
  aluminium: 'Aluminium',
};

function windingFactors(): Conversion {
  const reference = limitValue('winding-reference-20');
  return {
    id: 'winding',
    title: `Winding resistance to ${celsius(reference)}`,
    about:
      'What a resistance read at this winding temperature is multiplied by, to compare it with one at the reference.',
    limits: ['winding-zero-copper', 'winding-zero-copper-iec', 'winding-zero-aluminium', 'winding-reference-20'],
    head: ['Winding', ...conductors.map((conductor) => conductorNames[conductor])],
    rows: steps(-10, 120, 10).map((at) => ({
      at,
      label: celsius(at),
      cells: conductors.map((conductor) => temperatureFactor(conductor, at, reference)?.toFixed(3) ?? ''),
    })),
  };
}

export const conversions: Conversion[] = [insulationFactors(), windingFactors(), dewPoints()];
