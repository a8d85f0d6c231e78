/** The invented Marrow Bay readings of the worked example, in ohms; a test gives them to the calculator. */
export const dcPlus = { U: 690_000, V: 702_000, W: 685_000 };
export const dcMinus = { U: 2.4, V: 38_900, W: 39_600 };
