import { encode } from 'uqr';
import { failed, type Problem, type Result, succeeded } from './problem.ts';

/** Rows of a QR code, true for dark; with the quiet border of four that the standard asks for. */
export interface QrCode {
  version: number;
  rows: boolean[][];
}

const quietZone = 4;

/** The QR code of an address at the lowest correction level, which holds most, or a problem if it does not fit. */
export function qrCodeOf(address: string): Result<QrCode, Problem<'too-long-for-code'>> {
  try {
    const { version, data } = encode(address, { ecc: 'L', boostEcc: true, border: quietZone });
    return succeeded({ version, rows: data });
  } catch {
    return failed('too-long-for-code');
  }
}
