/**
 * What the functions of a question give, written a second time from the textbook formulas and without the kernel, in
 * base units. Sources: parallel resistances, discharge through a resistor and star to line resistances are textbook
 * physics; halving for each 10 K is the rule of thumb of IEEE 43; 234.5 is the constant of copper in NEMA MG 1 (recalled
 * from memory); the dew point is Magnus' formula with the constants of Alduchov and Eskridge 1996 (recalled from memory);
 * 500 MΩ·kft is the constant of polyvinyl chloride in the ICEA formula R = K · log10(D/d) (recalled from memory).
 */
export const workedResults: Record<string, (...values: number[]) => number> = {
  spread: (...r) => (Math.max(...r) / Math.min(...r) - 1) * 100,
  deviation: (a = 0, b = 0, c = 0) => {
    const mean = (a + b + c) / 3;
    return (Math.max(a - mean, mean - a, b - mean, mean - b, c - mean, mean - c) * 100) / mean;
  },
  parallel: (a = 0, b = 0) => (a * b) / (a + b),
  besideKnown: (joined = 0, known = 0) => (joined * known) / (known - joined),
  correctedHalving: (reading = 0, from = 0, to = 0) => reading * Math.exp((Math.LN2 * (from - to)) / 10),
  copperAt: (ohms = 0, from = 0, to = 0) => (ohms * (234.5 + to)) / (234.5 + from),
  starU: (uv = 0, vw = 0, wu = 0) => (uv - vw + wu) / 2,
  starV: (uv = 0, vw = 0, wu = 0) => (uv + vw - wu) / 2,
  starW: (uv = 0, vw = 0, wu = 0) => (vw + wu - uv) / 2,
  // The one question with counts says that the last digit is a tenth of an ohm.
  least: (reading = 0, percent = 0, counts = 0) => reading - (reading * percent) / 100 - counts * 0.1,
  greatest: (reading = 0, percent = 0, counts = 0) => reading + (reading * percent) / 100 + counts * 0.1,
  dewPoint: (air = 0, humidity = 0) => {
    const gamma = Math.log(humidity / 100) + (17.625 * air) / (243.04 + air);
    return (243.04 * gamma) / (17.625 - gamma);
  },
  waitUntil: (first = 0, second = 0, minutes = 0, end = 0) =>
    (minutes * (Math.log(second) - Math.log(end))) / (Math.log(first) - Math.log(second)),
  corePvc: (outer = 0, inner = 0, metres = 0) => (500e6 * 304.8 * Math.log10(outer / inner)) / metres,
  lengthPvc: (outer = 0, inner = 0, ohms = 0) => (500e6 * 304.8 * Math.log10(outer / inner)) / ohms,
};

/**
 * The verdict that the printed readings of a question have by the rules of the articles, worked out by hand: a reading
 * below the after-trip limit at room temperature is no-go, one that a cold winding makes look good is undecided; one
 * position of six shorted is no-go, a U that may still have been charging is undecided; a bus below the touch voltage
 * that would falsify a resistance is undecided.
 */
export const workedVerdicts: Record<string, string> = {
  'deciding/baseline-and-record always-low': 'no-go',
  'deciding/before-power-goes-on-again undecided': 'undecided',
  'measuring/bridge-check climbing-row': 'undecided',
  'measuring/choosing-the-limit between-two-limits': 'no-go',
  'safety/lockout-and-stored-energy recovered': 'undecided',
  'safety/safe-measurement two-limits': 'undecided',
  'trip/output-stage-failure one-of-six': 'no-go',
  'trip/output-stage-failure verdict': 'no-go',
};

const prefixes: Record<string, number> = {
  G: 1e9,
  M: 1e6,
  k: 1e3,
  m: 1e-3,
  '': 1,
};

/** The figure of a printed reading in its base unit, and the unit: `2.2 GΩ` is 2.2e9 of `Ω`. NaN for words and ranges. */
export function printedFigure(text: string): { value: number; unit: string } {
  const [, numeral = '', prefix = '', unit = ''] = /^([−-]?[\d.]+)\s(?:([GMkm])(?=[ΩVm]))?(\S+)$/.exec(text) ?? [];
  // Millimetres stay millimetres, as the cable formula takes a ratio.
  if (prefix === 'm' && unit === 'm') return { value: Number(numeral), unit: 'mm' };
  return numeral === ''
    ? { value: Number.NaN, unit: '' }
    : {
        value: Number(numeral.replace('−', '-')) * (prefixes[prefix] ?? Number.NaN),
        unit,
      };
}
