import { limitValue } from '../../../src/kernel/limits.ts';
import { formatQuantity, formatRounded } from '../../../src/kernel/reading/format-reading.ts';
import { intervalOf } from '../../../src/kernel/reading/interval.ts';
import type { Reading } from '../../../src/kernel/reading/reading.ts';

/** An invented insulation tester, and readings near the after-trip limit, in ohms; a test gives them to the calculator. */
export const tester = { percent: 10, counts: 2 };
export const resolution = 1e6;
export const readings = [140e6, 105e6, 96e6, 82e6];

const read = (value: number): Reading => ({ kind: 'value', value, unit: 'Ω', resolution });
export const spans = readings.map((value) => ({ value, ...intervalOf(read(value), tester) }));
const point = limitValue('after-trip-point');
export const verdictOf = ({ lo, hi }: { lo: number; hi: number }) =>
  lo >= point ? 'go' : hi < point ? 'no-go' : 'undecided';

const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(value, 'Ω'));
export const rounded = (value: number) => nbsp(formatRounded(value, 'Ω'));
export const percent = (value: number) => `${value}\u00a0%`;
/** From where on this tester can pass, and below which it can condemn. */
export const passesFrom = rounded((point + tester.counts * resolution) / (1 - tester.percent / 100));
export const failsBelow = rounded((point - tester.counts * resolution) / (1 + tester.percent / 100));

/** The same point with the largest error that the tester standard allows. */
const widest = limitValue('insulation-tester-error') / 100;
export const widestFrom = rounded(point / (1 - widest));
export const widestBelow = rounded(point / (1 + widest));

/** A rail of Marrow Bay's Lift, with a simple and with a better multimeter; readings in ohms. */
export const rail = { U: 46_200, V: 51_400, W: 46_300 };
export const better = { U: 46_240, V: 51_380, W: 46_280 };
export const meters = { simple: { percent: 2.1, counts: 6 }, better: { percent: 0.15, counts: 3 } };
export const steps = { simple: 100, better: 10 };
