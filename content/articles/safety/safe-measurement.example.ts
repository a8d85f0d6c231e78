/** The invented Marrow Bay bus voltages of the worked example, in volts, one after the other. */
export const bus = { early: 212, later: 2.4, last: 0.02 };
