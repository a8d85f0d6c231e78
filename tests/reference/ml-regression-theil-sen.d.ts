/** The package has no types; these are the ones that the tests use. */
declare module 'ml-regression-theil-sen' {
  export class TheilSenRegression {
    constructor(x: number[], y: number[]);
    slope: number;
    intercept: number;
  }
}
