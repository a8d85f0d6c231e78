import { describe, expect, it } from 'vitest';
import { failure, read } from '../../../support/read-or-fail.ts';

describe('texts with a clear meaning from another keyboard or a sentence', () => {
  const rows: [typed: string, same: string][] = [
    ['450 kOhm.', '450 kOhm'],
    ['450k.', '450k'],
    ['2.2 MΩ.', '2.2 MΩ'],
    ['>430M.', '>430M'],
    ['450 к', '450 k'],
    ['450 К', '450 K'],
    ['450 кОм', '450 kOhm'],
    ['2,2 МОм', '2,2 MOhm'],
    ['2М2', '2M2'],
    ['4к7', '4k7'],
    ['0,3 Ом', '0,3 Ohm'],
    ['2 ГОм', '2 GOhm'],
    ['1 ТОм', '1 TOhm'],
    ['50 мкОм', '50 µOhm'],
    ['450 κΩ', '450 kΩ'],
    ['450 ΚΩ', '450 kΩ'],
    ['2 ΜΩ', '2 MΩ'],
    ['４５０ ｋΩ', '450 kΩ'],
    ['４５０ｋ', '450k'],
    ['２．２　ＭΩ', '2.2 MΩ'],
    ['０，４５Ｍ', '0,45M'],
    ['＞４３０Ｍ', '>430M'],
    ['450 ㏀', '450 kΩ'],
    ['2.2 ㏁', '2.2 MΩ'],
    ['450\u200bk', '450k'],
    ['1\u202f000 kΩ', '1 000 kΩ'],
    ['1‘000 kΩ', "1'000 kΩ"],
  ];
  it.each(rows)('“%s” is “%s”', (text, same) => {
    expect(read(text)).toEqual(read(same));
  });

  it('in the other fields', () => {
    expect(read('500 В', 'voltage')).toEqual(read('500 V', 'voltage'));
    expect(read('20 мВ', 'voltage')).toEqual(read('20 mV', 'voltage'));
    expect(read('1 кВ', 'voltage')).toEqual(read('1 kV', 'voltage'));
    expect(read('25 °С', 'temperature')).toEqual(read('25 °C', 'temperature'));
    expect(read('25℃', 'temperature')).toEqual(read('25 °C', 'temperature'));
    expect(read('60 sec.', 'seconds')).toEqual(read('60 s', 'seconds'));
    expect(read('1500 мкФ', 'capacitance')).toEqual(read('1500 µF', 'capacitance'));
    expect(read('1500 μF', 'capacitance')).toEqual(read('1500 uF', 'capacitance'));
  });

  it('keep milli and mega apart: a small Cyrillic letter is asked about as a Latin one is', () => {
    expect(failure('450м').suggestions).toEqual(['450 mΩ', '450 MΩ']);
    expect(failure('450 мОм').suggestions).toEqual(['450 mΩ', '450 MΩ']);
    expect(failure('2м2').suggestions).toEqual(['2.2 mΩ', '2.2 MΩ']);
    expect(failure('４５０ｍ').suggestions).toEqual(['450 mΩ', '450 MΩ']);
    expect(failure('20 МВ', 'voltage').suggestions).toEqual(['20 mV']);
    expect(failure('20 м', 'voltage').suggestions).toEqual(['20 mV']);
  });
});
