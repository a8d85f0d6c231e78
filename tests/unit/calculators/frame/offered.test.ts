import { describe, expect, test } from 'vitest';
import { calculator as bridgeForm } from '../../../../src/calculators/bridge/form.ts';
import { offeredBy } from '../../../../src/calculators/frame/offered.ts';
import { calculatorNames } from '../../../../src/calculators/registry.ts';
import { darkPath } from '../../../../src/ui/sharing/QrDrawing.tsx';
import { shareText } from '../../../../src/visit/record/share.ts';
import { driveOnly, soundBridge, visitOf } from '../../../support/marrow-bay-visits.ts';

const textOf = (shared: Parameters<typeof shareText>[0]) => {
  const text = shareText(shared);
  if (!text.ok) throw new Error(text.problem.message);
  return text.value;
};
const offered = (shared: Parameters<typeof shareText>[0]) => offeredBy(textOf(shared), 'bridge', bridgeForm.fields);

describe('a link to a calculator', () => {
  test('offers its readings by name, and takes only fields that the form has', () => {
    const form = { ...soundBridge, foreign: 'x', tolerance: '' };
    const offer = offered({ kind: 'calculator', calculator: 'bridge', form });
    expect(offer).toMatchObject({ kind: 'form', typed: soundBridge });
    expect(offer.kind === 'form' && 'foreign' in offer.typed).toBe(false);
    expect(offer.kind === 'form' && offer.entries.slice(0, 3)).toEqual([
      { name: 'DC-bus voltage', value: '0.03 V' },
      { name: 'Motor leads at the drive', value: 'Taken off U, V and W' },
      { name: 'DC+ to U', value: '482k' },
    ]);
  });

  test.each(calculatorNames.filter((name) => name !== 'bridge'))('for another calculator leads there: %s', (name) => {
    const offer = offered({ kind: 'calculator', calculator: name, form: {} });
    expect(offer).toMatchObject({ kind: 'elsewhere' });
    expect(offer.kind === 'elsewhere' && offer.address).toContain(`/calculators/${name}/#share=1.`);
  });

  test('for a visit leads to the visits', () => {
    const offer = offered({ kind: 'visit', visit: visitOf(driveOnly) });
    expect(offer.kind === 'elsewhere' && offer.address).toContain('/visit/#share=1.');
  });

  test('for a calculator that is not in this edition is refused, and a damaged one too', () => {
    expect(offered({ kind: 'calculator', calculator: 'unknown-one', form: {} })).toMatchObject({ kind: 'refused' });
    expect(offeredBy('1.broken', 'bridge', bridgeForm.fields)).toMatchObject({ kind: 'refused' });
  });
});

test('the code is drawn as runs of dark squares', () => {
  const rows = [
    [true, true, false],
    [false, false, false],
    [true, false, true],
  ];
  expect(darkPath(rows)).toBe('M0 0h2v1H0zM0 2h1v1H0zM2 2h1v1H2z');
});
