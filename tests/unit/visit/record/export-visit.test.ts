import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { exportVisit, fileName } from '../../../../src/visit/record/export-visit.ts';
import { readVisitFile, readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { arbitraryVisit, wholeVisits } from './support/arbitrary-visit.ts';
import { at, typicalVisit } from './support/typical-visit.ts';

const named = (machine: string, axis: string) => fileName(newVisit('visit-0001', at(0), { machine, axis }));

describe('the name of the file', () => {
  test.each([
    ['Line 2', 'Lift', 'visit-Line-2-Lift-2026-03-03.json'],
    ['', '', 'visit-2026-03-03.json'],
    ['Linie 2 / Süd', 'Achse „Hub“', 'visit-Linie-2-Süd-Achse-Hub-2026-03-03.json'],
    ['../../etc/passwd', 'C:\\nul', 'visit-etc-passwd-C-nul-2026-03-03.json'],
    ['玻璃线', '升降', 'visit-玻璃线-升降-2026-03-03.json'],
    ['\u202Efdp.exe', '', 'visit-fdp-exe-2026-03-03.json'],
  ])('%j, %j: %s', (machine, axis, name) => {
    expect(named(machine, axis)).toBe(name);
  });

  test('any text gives one name that a file system accepts', () => {
    fc.assert(
      fc.property(arbitraryVisit, (visit) => {
        const name = fileName(visit);
        expect(name).toMatch(/^visit(-[\p{L}\p{N}-]+)?-\d{4}-\d\d-\d\d\.json$/u);
        expect(new TextEncoder().encode(name).length).toBeLessThan(255);
      }),
      { numRuns: wholeVisits },
    );
    expect(new TextEncoder().encode(named('𐎀'.repeat(80), '𐎀'.repeat(80))).length).toBeLessThan(255);
  });
});

test('an exported visit is read back completely, including snapshots and decision', async () => {
  const visit = typicalVisit();
  const { text } = exportVisit(visit);
  expect(readVisitText(text)).toEqual({ ok: true, value: { visit, photographs: [] } });
  expect(await readVisitFile(new Blob([text]))).toEqual({ ok: true, value: { visit, photographs: [] } });
  expect(text.split('\n').length).toBeGreaterThan(100);
});
