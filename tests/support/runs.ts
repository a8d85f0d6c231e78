/** How many cases each property is tried with, in every run; FIELDBOOK_RUNS sets another number. */
export const runs = Number(process.env.FIELDBOOK_RUNS ?? 2500);
