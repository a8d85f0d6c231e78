import { storedEnergy } from '../../../kernel/electrics/discharge-law.ts';
import { driveNetwork } from '../../simulator/drive-network.ts';
import { source } from '../../simulator/network.ts';
import { operatingPoint } from '../../simulator/operating-point.ts';
import { leadsOffAt20, middleAxis } from '../middle-axis.ts';

export type Leads = 'on' | 'off';

/** A motor with permanent magnets that is turned, and the bus of its drive afterwards. */
export interface Turned {
  leads: Leads;
  perMinute: number;
  /** Voltage between two leads, rms and peak, in V. */
  lineVolts: number;
  peakVolts: number;
  busVolts: number;
  joules: number;
}

/**
 * Peak voltage between two leads at `perMinute` turns. The voltage of a magnet motor grows with its speed, and a sine has
 * √2 times its rms value as its peak (any textbook of electrical machines). `voltsPerThousand`: rms between two leads at
 * 1000 min⁻¹, as on a data sheet.
 */
export function peakVolts(perMinute: number, voltsPerThousand: number): number {
  return Math.SQRT2 * (perMinute / 1000) * voltsPerThousand;
}

/**
 * The bus of the practice’s drive, turned until it rises no further: its capacitor takes no more current. The diodes let
 * it follow the highest voltage between two leads, so the motor is a source of that peak behind two windings; the small
 * valleys between the peaks of three phases are left out.
 */
export function turnedMotor(leads: Leads, perMinute: number, voltsPerThousand: number): Turned {
  const axis = middleAxis();
  const { parameters } = axis;
  const peak = peakVolts(perMinute, voltsPerThousand);
  const motor = source('drive.U', 'drive.V', peak, parameters.windingOhms.U + parameters.windingOhms.V);
  const network = [...driveNetwork(axis, leadsOffAt20), ...(leads === 'on' ? [motor] : [])];
  const at = operatingPoint(network);
  const busVolts = at('DC+') - at('DC-');
  return {
    leads,
    perMinute,
    lineVolts: peak / Math.SQRT2,
    peakVolts: peak,
    busVolts,
    joules: storedEnergy(parameters.busFarads, busVolts),
  };
}
