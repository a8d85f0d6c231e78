/** Invented figures of Marrow Bay's Bridge: how fast the current rises by dI/dt = V/L, with a sound motor and with a short. */
const busVolts = 560;
const toTheTripLevel = 30;
const motorHenries = 8e-3;
const cableHenries = 10e-6;

const microseconds = (seconds: number) => `${Number((seconds * 1e6).toPrecision(2))}\u00a0µs`;

/** Time from no current to the trip level, in seconds: constant voltage, no resistance. */
const riseTime = (henries: number) => (henries * toTheTripLevel) / busVolts;

export const throughMotor = microseconds(riseTime(motorHenries));
export const throughShort = microseconds(riseTime(cableHenries));
