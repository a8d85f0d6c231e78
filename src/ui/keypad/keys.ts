import { type Quantity, quantityRules } from '../../kernel/reading/quantity.ts';

/** What a key does to the text of its field; `typeKey` does it. */
export type TypingKey =
  | { kind: 'put'; text: string }
  | { kind: 'mark'; text: '.' | ',' }
  | { kind: 'unit'; text: string }
  | { kind: 'word'; text: string }
  | { kind: 'bound'; text: '>' | '<' }
  | { kind: 'minus' }
  | { kind: 'delete' };

/** A key with what stands on it, and its name for a screen reader if that says too little. */
export interface TypingKeyCap {
  key: TypingKey;
  cap: string;
  name?: string;
}

/** Digits in the order of a telephone: rows of three and a last one; a gap keeps the others in their places. */
export interface KeypadLayout {
  units: TypingKeyCap[];
  digits: (TypingKeyCap | undefined)[];
  /** Beside the rows of digits, from the top. */
  signs: (TypingKeyCap | undefined)[];
}

const unitNames: Record<string, string> = {
  ...{ mΩ: 'milliohms', Ω: 'ohms', kΩ: 'kilohms', MΩ: 'megohms', GΩ: 'gigohms' },
  ...{ mV: 'millivolts', V: 'volts', kV: 'kilovolts' },
  ...{ s: 'seconds', min: 'minutes', h: 'hours', m: 'metres', ft: 'feet', mm: 'millimetres', in: 'inches' },
  ...{
    µF: 'microfarads',
    ...{ mH: 'millihenries', µH: 'microhenries', A: 'amperes', mA: 'milliamperes' },
    mF: 'millifarads',
    W: 'watts',
    kW: 'kilowatts',
    '°C': 'degrees Celsius',
    '°F': 'degrees Fahrenheit',
  },
};

const digit = (text: string): TypingKeyCap => ({ key: { kind: 'put', text }, cap: text });

/**
 * What a unit key types. A prefix of ohms is one letter, so that it can be the decimal mark as well: 4k7. `m` alone would
 * be asked about.
 */
function unitKey(symbol: string): TypingKeyCap {
  const text = /^[kMGT]?Ω$/.test(symbol) ? symbol.slice(0, 1) : ` ${symbol}`;
  const name = unitNames[symbol];
  return { key: { kind: 'unit', text }, cap: symbol, ...(name !== undefined && { name: `${symbol}, ${name}` }) };
}

/** The keys for a field: only what its quantity knows. `units` are those that the field offers. */
export function keypadLayout(quantity: Quantity, units: readonly string[], mark: '.' | ','): KeypadLayout {
  const { overRange, signed } = quantityRules[quantity];
  const [one, two, three, four, five, six, seven, eight, nine, zero] = [...'1234567890'].map(digit);
  const point: TypingKeyCap = { key: { kind: 'mark', text: mark }, cap: mark, name: `${mark} decimal mark` };
  const minus: TypingKeyCap = { key: { kind: 'minus' }, cap: '−', name: '− minus' };
  const signs: TypingKeyCap[] = [
    { key: { kind: 'word', text: 'OL' }, cap: 'OL', name: 'OL, over-range' },
    { key: { kind: 'bound', text: '>' }, cap: '>', name: '> more than' },
    { key: { kind: 'bound', text: '<' }, cap: '<', name: '< less than' },
  ];
  return {
    units: units.map(unitKey),
    digits: [
      ...[one, two, three, four, five, six, seven, eight, nine],
      ...[quantity === 'counts' ? undefined : point, zero, signed ? minus : undefined],
    ],
    signs: overRange ? signs : [undefined, undefined, undefined],
  };
}
