import { measureAfter } from '../../guide/routes.ts';
import { retryProblem } from '../retry.ts';
import type { PlainRule } from '../rule.ts';

export const stripDriveRule: PlainRule<'strip-drive'> = {
  touches: true,
  energy: 'none',
  restsOn: ['disconnect-leads'],
  problem: () => undefined,
  next: (visit, record) =>
    visit['strip-drive']?.answer.state === 'not-allowed'
      ? measureAfter('strip-drive', visit, record)
      : 'retry-stripped',
};

export const retryStrippedRule: PlainRule<'retry-stripped'> = {
  touches: false,
  energy: 'enable',
  restsOn: ['strip-drive'],
  problem: retryProblem,
  next: (visit, record) => measureAfter('strip-drive', visit, record),
};
