/** The invented Marrow Bay readings of the worked example, in ohms and °C; a test gives them to the calculator. */
export const visit = {
  joined: 6.1e6,
  cable: 2.4e9,
  bonded: 1.9e9,
  motor: 6.2e6,
  celsius: 48,
  /** The motor once more, clean and dry, and in the record of its first year. */
  again: 6.3e6,
  before: 900e6,
};

/** An invented warm motor, on which the methods of correction differ: the reading (Ω) and its temperature (°C). */
export const warm = { reading: 12e6, celsius: 62 };

/** A temperature between two rows of the conversion table, and a moderate room, to show what the formulas give. */
export const betweenRows = { celsius: 33 };
export const room = { celsius: 25, humidity: 50 };
