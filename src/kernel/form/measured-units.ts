/** Units of resistances that a field offers, by what is measured in it; any unit that is typed is read all the same. */

/** Windings, cores, protective conductors, test leads: a bad one may have kilohms, or is over-range. */
export const conductorUnits: readonly string[] = ['mΩ', 'Ω', 'kΩ'];

/** Insulation, with an insulation tester or, when it is bad, with a multimeter. */
export const insulationUnits: readonly string[] = ['Ω', 'kΩ', 'MΩ', 'GΩ'];

/** What an instrument can show at most. */
export const upperLimitUnits: readonly string[] = ['kΩ', 'MΩ', 'GΩ'];
