/** The invented plate of a holding brake, in volts and watts. */
export const plate = { volts: 24, watts: 12 };

/** Ohms of a coil by its plate. */
export const coilOhms = ({ volts, watts }: typeof plate): number => volts ** 2 / watts;
