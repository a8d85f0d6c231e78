import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Shows whether the insulation of a motor is getting worse: readings over years, carried to one temperature, with a robust line, its uncertainty, and when it meets the minimum.',
  hazards: ['lethal-voltage', 'stored-energy', 'hanging-axis'],
  conditions:
    'supply locked out and bus dead before each reading, the same hook-up and voltage, winding temperature noted, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead, before each reading.',
    'Each reading was taken with the same hook-up, test voltage and test duration.',
    'The winding temperature was noted with each reading.',
    'A hanging axis was supported or pinned.',
  ],
  otherWords: [
    'trending',
    'history',
    'ageing',
    'aging',
    'deterioration',
    'predictive maintenance',
    'condition monitoring',
    'Theil-Sen',
    'regression',
    'spreadsheet',
    'CSV',
    'remaining life',
  ],
  related: ['deciding/baseline-and-record', 'measuring/insulation-testing', 'safety/safe-measurement'],
};
