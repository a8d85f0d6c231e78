/** The invented Marrow Bay readings of the worked example, in ohms; a test gives them to the calculator. */
export const dcPlus = { U: 1_420_000, V: 1_380_000, W: 1_450_000 };
export const dcMinus = { U: 46_200, V: 44_800, W: 21_300 };
