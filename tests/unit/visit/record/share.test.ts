import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitValue } from '../../../../src/kernel/limits.ts';
import { shareAddress, shareInAddress } from '../../../../src/kernel/link/share-address.ts';
import { changeDetails, newVisit } from '../../../../src/visit/record/change-visit.ts';
import { readShare, type Shared, shareText, withoutSnapshots } from '../../../../src/visit/record/share.ts';
import { runs } from '../../../support/runs.ts';
import { arbitraryForm, arbitraryVisit, wholeVisits } from './support/arbitrary-visit.ts';
import { must } from './support/must.ts';
import { at, typicalVisit } from './support/typical-visit.ts';

const calculators = ['bridge', 'insulation', 'isolation', 'winding'];
const back = (shared: Shared) => readShare(must(shareText(shared)));

describe('there and back', () => {
  test('any filled calculator', () => {
    fc.assert(
      fc.property(fc.constantFrom(...calculators), arbitraryForm, (calculator, form) => {
        const shared: Shared = { kind: 'calculator', calculator, form };
        expect(back(shared)).toEqual({ ok: true, value: shared });
      }),
      { numRuns: runs },
    );
  });

  test('any visit, without what was computed from it', () => {
    fc.assert(
      fc.property(arbitraryVisit, (visit) => {
        expect(back({ kind: 'visit', visit })).toEqual({
          ok: true,
          value: { kind: 'visit', visit: withoutSnapshots(visit) },
        });
      }),
      { numRuns: wholeVisits },
    );
  });

  test('typed texts are kept exactly; verdicts and decision are left out', () => {
    const visit = typicalVisit();
    const read = must(back({ kind: 'visit', visit }));
    if (read.kind !== 'visit') throw new Error('no visit');
    expect(read.visit.steps.bridge?.form).toEqual(visit.steps.bridge?.form);
    expect(read.visit.steps.bridge?.readAt).toEqual(visit.steps.bridge?.readAt);
    expect(read.visit.steps.bridge).not.toHaveProperty('snapshot');
    expect(read.visit).not.toHaveProperty('decision');
  });

  test('through an address under any base path, unescaped', () => {
    const share = must(shareText({ kind: 'visit', visit: typicalVisit() }));
    for (const page of ['https://example.org/visit/', 'http://10.0.0.7:4321/fieldbook/visit/?print#old']) {
      const address = shareAddress(page, share);
      expect(address.endsWith(`#share=${share}`)).toBe(true);
      expect(shareInAddress(new URL(address).hash)).toBe(share);
    }
  });
});

test('an address without a share has none', () => {
  for (const hash of ['', '#', '#results', '#case=marrow-bay-lift', '#sharing=1.x']) {
    expect(shareInAddress(hash)).toBeNull();
  }
});

test('a link from the first edition can still be read', () => {
  // If this fails, the dictionary or the packing has changed: raise the share version instead.
  const first = '1.Cn9HeyM1eRkTSl8mFkbZSL08E0tTGBfUwzKxsABx4X03EzM9Q7gASL2xnoUCag_ZxFTPPBvYFgIA';
  expect(readShare(first)).toEqual({
    ok: true,
    value: {
      kind: 'calculator',
      calculator: 'bridge',
      form: {
        busVoltage: '0.03 V',
        motorLeads: 'off',
        plusU: '482k',
        plusV: '495k',
        plusW: '488k',
        minusU: '46.1k',
        minusV: '3.8 Ω',
        minusW: '45.7k',
      },
    },
  });
});

test('a whole visit is a short link', () => {
  const visit = must(shareText({ kind: 'visit', visit: typicalVisit() }));
  expect(visit.length).toBeLessThan(JSON.stringify(typicalVisit()).length / 4);
  expect(visit).toMatch(/^1\.[A-Za-z0-9_-]+$/);
});

test('a visit that is too large for a link is refused before it is sent', () => {
  const noise = Array.from({ length: 90 }, (_, i) => ({
    drive: randomText(i, 480),
    axes: [randomText(i + 1000, 480), randomText(i + 2000, 480)],
  }));
  const visit = changeDetails(newVisit('visit-0001', at(0)), { servedAxes: noise }, at(1));
  expect(shareText({ kind: 'visit', visit })).toMatchObject({ ok: false, problem: { kind: 'too-long-to-share' } });
  expect(limitValue('share-link')).toBeLessThan(90 * 3 * 480);
});

/** Letters that can't be packed, the same in each run. */
function randomText(seed: number, length: number): string {
  let state = seed * 2_654_435_761 + 1;
  return Array.from({ length }, () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return String.fromCharCode(0x4e00 + ((state >> 8) % 8000));
  }).join('');
}
