/** The invented Carriage readings, in Ω: motor alone, and the cable alone with both ends free. */
export const shown = { motor: 0.4e6, cable: 2e9 };
