import type { PlainRule } from '../rule.ts';

export const findDriveRule: PlainRule<'find-drive'> = {
  touches: false,
  energy: 'none',
  restsOn: [],
  // A drive can only indicate an axis that it has.
  problem: ({ observation, axesOnDrive, indicatedAxis }) => {
    if (indicatedAxis === undefined) return observation === 'looked' ? 'indication-contradicts' : undefined;
    return indicatedAxis >= 1 && indicatedAxis <= axesOnDrive ? undefined : 'indication-contradicts';
  },
  next: () => 'symptom',
};
