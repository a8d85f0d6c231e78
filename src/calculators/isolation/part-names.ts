import type { PartStatus } from './rule/input.ts';
import type { StageName } from './rule/stage.ts';

export const stageNames: Record<StageName, string> = {
  joined: 'Cable and motor joined',
  cable: 'Cable alone',
  bonded: 'Cable alone, other cores bonded to PE',
  motor: 'Motor alone',
};

export const partStatusNames: Record<PartStatus, string> = {
  'proven-good': 'proven good',
  'proven-bad': 'proven bad',
  suspect: 'suspect',
  'not-suspect': 'not suspect',
  undecided: 'undecided',
  'not-tested': 'not yet tested',
};
