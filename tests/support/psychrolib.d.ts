/** The few functions of psychrolib that the tests use; the package has no types. */
declare module 'psychrolib' {
  interface Psychrolib {
    SI: unknown;
    SetUnitSystem(system: unknown): void;
    /** Dew point (over ice below 0 °C) in °C from dry-bulb temperature in °C and relative humidity from 0 to 1. */
    GetTDewPointFromRelHum(dryBulb: number, humidity: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
