import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CalculatorForm } from '../../../../src/kernel/form/calculator-form.ts';
import { blankForm, type FormField, fillForm, isBlank, type Typed } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import type { Quantity } from '../../../../src/kernel/reading/quantity.ts';
import { runs } from '../../../support/runs.ts';
import { anyForm, forms, liftVisit, names } from '../../calculators/visits.ts';

const outcome = (changes: Typed) => forms.bridge.judge(liftVisit('bridge', changes));

describe('an entry that can’t be read', () => {
  test.each([
    ['letters', 'abc'],
    ['a negative value', '-450k'],
    ['an absurd magnitude', '9e20 MΩ'],
    ['another quantity', '500 V'],
    ['no unit', '450'],
    ['milli or mega', '4.5 m'],
    ['thousands or decimals', '1,000k'],
    ['ten thousand characters', '4'.repeat(10_000)],
  ])('%s: a message beside the field, and no verdict', (_, text) => {
    const bad = outcome({ plusU: text });
    expect(bad.state).toBe('unreadable');
    expect(Object.keys(bad.state === 'unreadable' ? bad.errors : {})).toEqual(['plusU']);
  });

  test('costs nothing but its own reading', () => {
    const read = readForm(forms.bridge.fields, liftVisit('bridge', { plusU: 'abc' }));
    expect(read.readings.plusU).toEqual({ kind: 'missing' });
    expect(read.readings.plusV).toMatchObject({ value: 495e3 });
    expect(read.readings.minusV).toMatchObject({ value: 3.8 });
  });

  test('offers only texts that can be read themselves', () => {
    for (const text of ['450', '4.5 m', '1,000k', '>12']) {
      const read = readForm(forms.bridge.fields, { plusU: text });
      const suggestions = read.errors.plusU?.suggestions ?? [];
      expect(suggestions.length, text).toBeGreaterThan(0);
      for (const plusU of suggestions) expect(readForm(forms.bridge.fields, { plusU }).errors).toEqual({});
    }
  });

  test('a foreign answer to a choice is an error, not a guess', () => {
    expect(outcome({ motorLeads: 'perhaps' })).toMatchObject({ state: 'unreadable', errors: { motorLeads: {} } });
  });
});

describe('the fields that only a visit has', () => {
  const fields: FormField[] = [
    { kind: 'tick', id: 'locked', name: 'Locked out' },
    { kind: 'text', id: 'remark', name: 'What you see' },
  ];

  test.each([
    ['yes', 'yes'],
    ['', ''],
    ['perhaps', ''],
    [undefined, ''],
  ])('a tick that holds %j is read as %j', (locked, expected) => {
    const read = readForm(fields, locked === undefined ? {} : { locked });
    expect(read).toMatchObject({ choices: { locked: expected }, errors: {}, unchosen: [] });
  });

  test('a text is taken as typed', () => {
    expect(readForm(fields, { remark: ' burnt? 450 ' }).texts).toEqual({ remark: ' burnt? 450 ' });
  });

  test('a tick alone is no reading', () => {
    expect(isBlank(fields, { locked: 'yes' })).toBe(true);
    expect(isBlank(fields, { locked: 'yes', remark: 'burnt' })).toBe(false);
  });
});

describe('a blank form', () => {
  test.each(names)('%s judges nothing, whatever is chosen', (name) => {
    const form = anyForm(name);
    expect(form.judge({})).toEqual({ state: 'blank' });
    expect(form.judge(blankForm(form.fields))).toEqual({ state: 'blank' });
    expect(isBlank(form.fields, { ...blankForm(form.fields), motorLeads: 'off', occasion: 'routine' })).toBe(true);
  });

  test('filling takes only what the form has fields for', () => {
    const filled = fillForm(forms.bridge.fields, { plusU: '1k', constructor: 'x', script: 'y' });
    expect(filled.plusU).toBe('1k');
    expect(Object.keys(filled)).toEqual(forms.bridge.fields.map(({ id }) => id));
  });
});

/** Entries that a form takes, a missing one among them. */
const readable: Record<Quantity, string[]> = {
  resistance: ['', 'OL', '>700M', '>2k', '<1k', '<300M', '450k', '46,1 kΩ', '3.2 MΩ', '180M', '2.4G', '0.3 Ω', '0'],
  voltage: ['', '0', '0.02', '30', '500 V', '1 kV', 'OL', '<2 V'],
  diode: ['', '0.41', '412 mV', 'OL', '0.002', '-0.3', '>2'],
  temperature: ['', '25', '77 °F', '-5', '85', '120 °C'],
  percent: ['', '10', '55 %', '100'],
  counts: ['', '3'],
  duration: ['', '1', '60 s', '10 min'],
  seconds: ['', '0', '12', '2 min'],
  capacitance: ['', '1500 µF', '1.5 mF', '0 F'],
  length: ['', '35', '115 ft', '1.2 km'],
  diameter: ['', '2.8', '4 mm', '0.11 in'],
  power: ['', '12', '18 W', '1.2 kW'],
  inductance: ['', '12.5 mH', '800 µH', '0.0125 H'],
  current: ['', '12.5', '18 A', '800 mA'],
};

/** Tables that people paste: whole, with rows that can't be read, with dates in doubt, and no table at all. */
const tables = [
  '',
  'nothing that is a table',
  '2021-05-03\t450M\t25',
  '3/5/2021;450M;25\n2022-05-03;>1.8G;25\n2023-05-03;<1M;25',
  'Date;R (MΩ);Temp\n2019-05-03;900;20\n2020-05-03;800;20\n2021-05-03;700;20\n2022-05-03;650;20\n2023-05-03;10;20',
];

function textsFor(field: FormField): string[] {
  switch (field.kind) {
    case 'reading':
      return readable[field.quantity];
    case 'choice':
    case 'several':
      return field.options.map(({ value }) => value);
    case 'text':
      return tables;
    case 'tick':
      return ['', 'yes'];
  }
}

function entriesOf(form: CalculatorForm, alsoUnreadable: boolean) {
  const entry = (field: FormField) => {
    const texts = textsFor(field);
    const usual = fc.constantFrom(...texts.filter((text) => field.id !== 'upperLimit' || /^(\d.*[MG]|)$/.test(text)));
    return alsoUnreadable ? fc.oneof({ weight: 30, arbitrary: usual }, fc.string({ unit: 'binary' })) : usual;
  };
  return fc.record(Object.fromEntries(form.fields.map((field) => [field.id, entry(field)])));
}

describe.each(names)('whatever is typed into %s', (name) => {
  const form = anyForm(name);

  test('readable entries are judged or blank, in sentences that are whole', () => {
    fc.assert(
      fc.property(entriesOf(form, false), (entries) => {
        const result = form.judge(entries);
        if (result.state === 'blank') return;
        if (result.state !== 'judged') throw new Error(result.state);
        const said = [...result.findings.map(({ text }) => text), ...result.steps].join(' ');
        expect(said).not.toMatch(/NaN|undefined|Infinity|∞/);
      }),
      { numRuns: runs },
    );
  });

  test('an unreadable entry gives a stated error and no verdict, never a throw', () => {
    fc.assert(
      fc.property(entriesOf(form, true), (entries) => {
        const bad = Object.values(readForm(form.fields, entries).errors);
        expect(form.judge(entries).state === 'unreadable').toBe(bad.length > 0);
        expect(bad.every(({ message }) => message.length > 10)).toBe(true);
      }),
      { numRuns: runs },
    );
  });
});
