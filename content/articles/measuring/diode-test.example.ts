/** Invented readings of Marrow Bay's Bridge in the diode test, in volts; OL where the meter shows none. */
export const forward = { plus: { U: 0.421, V: 0.418, W: 0.424 }, minus: { U: 0.415, V: 0.419, W: 0.09 } };
