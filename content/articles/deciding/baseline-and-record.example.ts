/** The invented joined readings of Bridge, lowest phase to PE: at commissioning, and after the trip at night. */
export const before = { ohms: 4e9, celsius: 14 };
export const after = { ohms: 320e6, celsius: 38 };
