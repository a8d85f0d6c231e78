import { type Quantity, quantityRules } from './quantity.ts';

export type ReadingErrorCode =
  | 'too-long'
  | 'not-a-reading'
  | 'not-a-number'
  | 'ambiguous-comma'
  | 'ambiguous-point'
  | 'zero-leads-groups'
  | 'lone-one'
  | 'milli-or-mega'
  | 'unit-missing'
  | 'unit-unknown'
  | 'other-quantity'
  | 'negative'
  | 'out-of-range'
  | 'no-over-range';

/**
 * Why a text is not a reading. `message` says what is wrong and what to do; `suggestions` are texts that can be read.
 */
export interface ReadingError {
  code: ReadingErrorCode;
  message: string;
  suggestions: string[];
}

const quantityNames: Record<Quantity, string> = {
  resistance: 'a resistance',
  voltage: 'a voltage',
  diode: 'a reading of the diode test',
  temperature: 'a temperature',
  percent: 'a percentage',
  counts: 'a number of counts',
  duration: 'a time',
  seconds: 'a time',
  capacitance: 'a capacitance',
  length: 'a length',
  diameter: 'a diameter',
  power: 'a power',
  inductance: 'an inductance',
  current: 'a current',
};

interface Detail {
  typed: string;
  units?: readonly string[];
  other?: Quantity;
  accepted?: string;
  length?: number;
}

/** All sentences about unreadable entries. */
export function readingError(
  code: ReadingErrorCode,
  quantity: Quantity,
  { typed, units = quantityRules[quantity].units, other, accepted, length }: Detail,
  suggestions: string[] = [],
): ReadingError {
  const like = `Type it like ${quantityRules[quantity].example}.`;
  const sentences: Record<ReadingErrorCode, string> = {
    'too-long': `This is ${length} characters long, too long for one reading. ${like}`,
    'not-a-reading': `“${typed}” is not ${quantityNames[quantity]}. ${like}`,
    'not-a-number': `The number in “${typed}” can't be read. Use one decimal mark and nothing else: ${quantityRules[quantity].example}.`,
    'ambiguous-comma': `“${typed}” can mean thousands or decimals. Choose which one you read.`,
    'ambiguous-point': `The point in “${typed}” can be a decimal mark or part thousands. Choose which one you read.`,
    'zero-leads-groups': `“${typed}” begins with a zero before a group of three digits: a digit may be lost, or a mark has slipped. Choose what you read, or type it again.`,
    'lone-one': `“${typed}” can be a one, or over-range: some displays show nothing but a 1 at the left for it. Choose which one you read.`,
    'milli-or-mega': `“${typed}” can mean milli (a thousandth) or mega (a million). Choose which one you read.`,
    'unit-missing': `“${typed}” has no unit: ${units.join(', ')}. Prefixes are a thousandfold apart: choose the one that ${quantityRules[quantity].printed ? 'is printed' : 'the meter shows'}.`,
    'unit-unknown': `The unit in “${typed}” is not known here. ${like}`,
    'other-quantity': `“${typed}” is ${quantityNames[other ?? quantity]}, and this field takes ${quantityNames[quantity]}. ${like}`,
    negative: `“${typed}” is negative. Leave out the minus sign: type what the meter shows with its leads the right way round.`,
    'out-of-range': `“${typed}” is outside what this field accepts (${accepted}). Check the unit.`,
    'no-over-range': `“${typed}” has no meaning for ${quantityNames[quantity]}. ${like}`,
  };
  return { code, message: sentences[code], suggestions };
}
