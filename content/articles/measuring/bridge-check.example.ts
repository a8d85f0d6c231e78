/** Invented readings of Marrow Bay's Carriage, in ohms; a test gives them to the calculator. */
export const leadsOn = { U: 3.6, V: 3.1, W: 3.5 };
export const dcPlus = { U: 690_000, V: 212_000, W: 702_000 };
export const dcMinus = { U: 46_200, V: 3.1, W: 45_800 };
