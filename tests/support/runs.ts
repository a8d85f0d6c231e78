/**
 * How many cases each property is tried with: `npm test` sets FIELDBOOK_RUNS to 10000, a single run of a project
 * takes fewer so that the answer comes while one is still typing.
 */
export const runs = Number(process.env.FIELDBOOK_RUNS ?? 1000);
