import { describe, expect, it } from 'vitest';
import { mapPhases, phases } from '../../../../src/kernel/electrics/phases.ts';

describe('the phases', () => {
  it('are U, V and W, in this order', () => {
    expect(phases).toEqual(['U', 'V', 'W']);
  });

  it('are mapped each to its own place', () => {
    expect(mapPhases({ U: 1, V: 2, W: 3 }, (value, phase) => `${phase}${value}`)).toEqual({
      U: 'U1',
      V: 'V2',
      W: 'W3',
    });
  });

  it('leave the source alone', () => {
    const source = { U: 1, V: 2, W: 3 };
    mapPhases(source, (value) => value * 2);
    expect(source).toEqual({ U: 1, V: 2, W: 3 });
  });
});
