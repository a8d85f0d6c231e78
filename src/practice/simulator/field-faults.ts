import type { Fault } from './fault-types.ts';
import { fieldCableFaults } from './field-cable-faults.ts';
import { fieldDriveFaults } from './field-drive-faults.ts';
import { fieldMachineFaults } from './field-machine-faults.ts';
import { fieldMotorFaults } from './field-motor-faults.ts';

/** Causes of the field that the tidy list of faults.ts leaves out. Their weights are in content/field. */
export const fieldFaults: readonly Fault[] = [
  ...fieldCableFaults,
  ...fieldDriveFaults,
  ...fieldMotorFaults,
  ...fieldMachineFaults,
];
