import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { calculator } from '../../../../src/calculators/insulation/form.ts';
import { fillForm, type Typed } from '../../../../src/kernel/form/field.ts';
import { VerdictPanel } from '../../../../src/ui/verdict/VerdictPanel.tsx';

// No source: how the project shows a verdict.

const sound = {
  ...{ occasion: 'after-trip', together: '1.2 GΩ', PE: '0.2 Ω', idleCores: 'to-pe' },
  ...{ testVoltage: '500 V', ratedVoltage: '400 V', windingTemperature: '22 °C' },
};

function shown(change: Typed, pending = false): string {
  const outcome = calculator.judge(fillForm(calculator.fields, { ...sound, ...change }));
  return renderToString(
    <VerdictPanel name="x" label="X" outcome={outcome} pending={pending} link={({ words }) => <a href="/">{words}</a>}>
      <svg />
    </VerdictPanel>,
  );
}

/** Where each of these stands in the page, in this order. */
const places = (html: string, ...parts: string[]) => parts.map((part) => html.indexOf(part));

describe('a failure', () => {
  const html = shown({ together: '320k' });
  const [fold, ...rest] = html.split('<details').reverse();

  test('stands first, then its next steps, then the drawing, then what passes', () => {
    const order = places(html, 'verdict-headline', 'data-severity="fail"', '<h4>Next', '<svg>', 'data-severity="pass"');
    expect(order.every((place) => place > 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test('leads to the calculator that goes on', () => {
    expect(html).toMatch(/Separate the cable from the motor[^<]*<a href="\/">Cable or motor<\/a>/);
  });

  test('folds what passes and the limits, and never what protects the person', () => {
    expect(fold).toContain('data-severity="pass"');
    expect(fold).toContain('Limits used');
    expect(fold).not.toContain('Discharge the winding to the frame after the test');
    expect(rest.join('')).toContain('Discharge the winding to the frame after the test');
    expect(rest.join('')).toContain('Never put an insulation tester on the terminals of a drive');
    expect(rest.join('')).toContain('Do not connect a drive to this');
    expect(fold).not.toMatch(/data-severity="(stop|fail|undecided|caution)"/);
  });
});

test('a pass says in sight what it does not mean', () => {
  const [, before = ''] = /^(.*)<details class="verdict-details"/s.exec(shown({})) ?? [];
  expect(before).toContain('The test says nothing of shorts between phases or turns');
});

test('the bar has the verdict’s word and its headline', () => {
  const bar = /<div class="verdict-bar".*?<\/div>/.exec(shown({ PE: '' }))?.[0] ?? '';
  expect(bar).toContain('<b>Undecided</b> Still missing: the PE pin to the frame');
});

test('while something typed has not settled, nothing of the older verdict is said', () => {
  const html = shown({ together: '320k' }, true);
  expect(html).not.toContain('verdict-headline');
  expect(html).toContain('data-verdict="empty"');
  const [, reasons = ''] = html.split('class="verdict-reasons');
  expect(reasons).toMatch(/^ of-older-entries" aria-hidden/);
  expect(html).toContain('<details class="verdict-details of-older-entries"');
});
