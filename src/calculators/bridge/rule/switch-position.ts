import { type Phase, phases } from '../../../kernel/electrics/phases.ts';

/** DC+ holds the three upper transistors, DC− the three lower ones. */
export type Rail = 'plus' | 'minus';

export const rails: readonly Rail[] = ['plus', 'minus'];

/** One of the six switches of an output stage, by the rail and the terminal that it joins; also the field of its resistance. */
export type SwitchPosition = `${Rail}${Phase}`;

export const partsOfPosition: Readonly<Record<SwitchPosition, { rail: Rail; phase: Phase }>> = {
  plusU: { rail: 'plus', phase: 'U' },
  plusV: { rail: 'plus', phase: 'V' },
  plusW: { rail: 'plus', phase: 'W' },
  minusU: { rail: 'minus', phase: 'U' },
  minusV: { rail: 'minus', phase: 'V' },
  minusW: { rail: 'minus', phase: 'W' },
};

export const switchPositions: readonly SwitchPosition[] = rails.flatMap((rail) =>
  phases.map((phase): SwitchPosition => `${rail}${phase}`),
);

/** `forward`: with the diodes conducting; `reverse`: with the leads exchanged. */
export type DiodeWay = 'forward' | 'reverse';

export const diodeWays: readonly DiodeWay[] = ['forward', 'reverse'];

/** One of the twelve readings of a diode test. */
export interface DiodePlace {
  position: SwitchPosition;
  way: DiodeWay;
}

/** The field of a reading: `plusForwardU`. */
export function diodeField({ position, way }: DiodePlace): string {
  const { rail, phase } = partsOfPosition[position];
  return `${rail}${way === 'forward' ? 'Forward' : 'Reverse'}${phase}`;
}
