import fc from 'fast-check';

/*
 * CI sets one seed, so that a tree which passed passes again; elsewhere each run draws new cases. A case that a run
 * found is kept as an example of its property.
 */
const { FIELDBOOK_SEED } = process.env;
if (FIELDBOOK_SEED) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(FIELDBOOK_SEED) });
