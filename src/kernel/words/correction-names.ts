import type { CorrectionMethod } from '../electrics/correction-validity.ts';

export const methodNames: Record<CorrectionMethod, string> = {
  halving: 'the halving rule',
  thermosetting: 'the formulas for thermosetting insulation',
  table: 'the conversion table',
};
