import { seeded } from '../../src/kernel/random.ts';
import { formatDay } from '../../src/kernel/reading/calendar-date.ts';

/** A semicolon file with decimal commas: one reading per day, falling by a few percent per year, with scatter. */
export function trendFile(rows: number, seed = 1): string {
  const random = seeded(seed);
  const firstDay = 15_000;
  const lines = Array.from({ length: rows }, (_, index) => {
    const temperature = 15 + 20 * random();
    const decades = 8.8 - 0.02 * (index / 365.25) - 0.03 * (temperature - 40) + 0.2 * (random() - 0.5);
    const megaohms = (10 ** (decades - 6)).toFixed(1).replace('.', ',');
    return `${formatDay(firstDay + index)};${megaohms} MΩ;${temperature.toFixed(1).replace('.', ',')}`;
  });
  return ['Date;Insulation;Winding temperature', ...lines].join('\r\n');
}
