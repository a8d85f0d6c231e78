import type { StepId } from '../../../../../src/visit/steps/ids.ts';

const lockout = {
  ...{ lockedOut: 'yes', waited: 'yes', meterProved: 'yes', peProved: 'yes' },
  ...{ supplyVoltage: '0.2 V', outputVoltage: '0.1 V', busVoltage: '0.03 V' },
};

/** What a person types at a sound axis, by step; recalled from memory. */
export const soundForms: Partial<Record<StepId, Record<string, string>>> = {
  'support-axis': { done: 'yes' },
  'support-again': { done: 'yes' },
  'lockout-1': lockout,
  'prove-again': lockout,
  'bus-again': { meterProved: 'yes', busVoltage: '0.03 V' },
  inspect: {
    reseated: 'none',
    ...{ seenDrive: 'nothing', seenMotor: 'nothing', seenMotorCable: 'nothing', seenFeedbackCable: 'nothing' },
  },
  'disconnect-leads': { done: 'yes' },
  bridge: {
    ...{ busVoltage: '0.03 V', motorLeads: 'off' },
    ...{ plusU: '470k', plusV: '478k', plusW: '474k', minusU: '45.8k', minusV: '46.2k', minusW: '46.0k' },
  },
  winding: { UV: '1.62 Ω', VW: '1.63 Ω', WU: '1.62 Ω', leads: 'four', windingTemperature: '21 °C' },
  'idle-cores': { cores: 'none' },
  insulation: {
    ...{ together: '900 MΩ', PE: '0.3 Ω', testVoltage: '500 V', ratedVoltage: '400 V', testMinutes: '1 min' },
    ...{ windingTemperature: '24 °C', idleCores: 'none', filter: 'none' },
  },
  reconnect: { done: 'yes' },
};
