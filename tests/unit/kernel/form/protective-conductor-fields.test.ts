import { describe, expect, it } from 'vitest';
import type { Typed } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import {
  frameEarthed,
  frameEarthedOf,
  peConductorOf,
  peCurrent,
  peMetres,
  peSection,
} from '../../../../src/kernel/form/shared-fields.ts';

const read = (typed: Typed) => readForm([peMetres, peSection, peCurrent, frameEarthed], typed);

describe('what a form says of a protective conductor', () => {
  it.each([
    [{}, {}],
    [{ peMetres: '85 m' }, { metres: 85 }],
    [
      { peMetres: '100 ft', peSection: '2.5' },
      { metres: 30.48, squareMillimetres: 2.5 },
    ],
    [
      { peSection: '0.75', peCurrent: 'continuity-tester' },
      { squareMillimetres: 0.75, amperes: 0.2 },
    ],
    [{ peCurrent: 'multimeter' }, {}],
    [{ peSection: 'not-stated', peCurrent: 'not-stated' }, {}],
    // Not among the answers: as if not stated.
    [{ peSection: '2.08' }, {}],
  ])('%j is %j', (typed, conductor) => {
    expect(peConductorOf(read(typed))).toEqual(conductor);
  });

  it.each([
    [{}, 'not-stated'],
    [{ frameEarthed: 'only-pe' }, 'only-pe'],
    [{ frameEarthed: 'also-otherwise' }, 'also-otherwise'],
    [{ frameEarthed: 'perhaps' }, 'not-stated'],
  ])('%j: the frame is earthed %s', (typed, frame) => {
    expect(frameEarthedOf(read(typed))).toBe(frame);
  });

  it('every cross-section of the table is offered, and none is chosen at first', () => {
    expect(peSection.options.map(({ label }) => label)).toEqual([
      'Not known',
      ...['0.75 mm²', '1 mm²', '1.5 mm²', '2.5 mm²', '4 mm²', '6 mm²', '10 mm²', '16 mm²', '25 mm²', '35 mm²'],
    ]);
    expect([peSection, peCurrent, frameEarthed].map(({ initial }) => initial)).toEqual(Array(3).fill('not-stated'));
  });
});
