import { describe, expect, test } from 'vitest';
import { parsePasted } from '../../../../src/calculators/absorption/paste.ts';

describe('pasted readings', () => {
  test('are assigned by their times, with any separator between time and reading', () => {
    const { taken, leftOut } = parsePasted(
      '15 s\t250M\r\n30s; 450 MΩ\n1 min 620M\n0:02:00\n2:00 = 0,8 GΩ\n10:00\t>1.8G\n\n',
    );
    expect(taken).toEqual({ t15: '250M', t30: '450 MΩ', t60: '620M', t120: '0,8 GΩ', t600: '>1.8G' });
    expect(leftOut.map(({ line }) => line)).toEqual(['0:02:00']);
  });

  test.each([
    ['450M', /time with its unit/],
    ['30 450M', /time with its unit/],
    ['45 s 450M', /no field for this time/],
    ['30 s 450', /no unit/],
    ['30 s 450 m', /milli/],
    ['30 s –', /no reading/],
    ['Time  Reading', /no field for this time|time with its unit/],
  ])('“%s” is left out with its reason', (line, reason) => {
    const { taken, leftOut } = parsePasted(line);
    expect(taken).toEqual({});
    expect(leftOut).toHaveLength(1);
    expect(leftOut[0]?.reason).toMatch(reason);
  });

  test('a repeated time is taken once, and the second line is listed', () => {
    const { taken, leftOut } = parsePasted('60 s 400M\n1 min 500M');
    expect(taken).toEqual({ t60: '400M' });
    expect(leftOut[0]?.line).toBe('1 min 500M');
  });
});
