import type { VisitDetails } from '../../visit/record/change-visit.ts';
import type { VisitCase } from './case-schema.ts';

type Axis = VisitCase['axis'];

/** The gantry of line 2 at the Marrow Bay Glassworks, as in every worked case. All of it is invented. */
const axes: Record<Axis, { words: string; drive: string; motor: string }> = {
  Bridge: {
    words: 'axis Bridge (horizontal, spans the table)',
    drive: 'Drive A, two axes, inventory MB-0211',
    motor: 'Servo motor, 3.4 kW, 400 V, inventory MB-0311',
  },
  Carriage: {
    words: 'axis Carriage (horizontal, its cable moves in a chain)',
    drive: 'Drive A, two axes, inventory MB-0211',
    motor: 'Servo motor, 2.1 kW, 400 V, inventory MB-0312',
  },
  Lift: {
    words: 'axis Lift (vertical, with brake)',
    drive: 'Drive B, one axis, inventory MB-0212',
    motor: 'Servo motor with brake, 1.4 kW, 400 V, inventory MB-0313',
  },
};

export const axisWords = (axis: Axis) => `Marrow Bay Glassworks, line 2, ${axes[axis].words}`;

/** What a visit to this axis notes beside its steps. */
export function gantry(axis: Axis): Pick<VisitDetails, 'drive' | 'motor' | 'servedAxes' | 'instruments'> {
  const { drive, motor } = axes[axis];
  return {
    drive,
    motor,
    servedAxes: [
      { drive: 'Drive A', axes: ['Bridge', 'Carriage'] },
      { drive: 'Drive B', axes: ['Lift'] },
    ],
    instruments: [
      { what: 'Multimeter', identification: 'MB-M07', accuracy: '' },
      { what: 'Insulation tester', identification: 'MB-I02', accuracy: '' },
      { what: 'Milliohm meter', identification: 'MB-R01, four leads', accuracy: '' },
    ],
  };
}
