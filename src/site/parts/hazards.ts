interface Hazard {
  /** What can hurt, in a word or two. */
  word: string;
  /** What to do, then why. */
  sentence: string;
  /** Our own line drawing on a 48 by 48 grid: strokes, then filled parts. */
  strokes: string;
  fills: string;
}

export const hazardIds = [
  'lethal-voltage',
  'stored-energy',
  'hanging-axis',
  'unexpected-motion',
  'arc-flash',
  'test-voltage',
  'hot-surface',
] as const;

export type HazardId = (typeof hazardIds)[number];

/** Hazards of the front matter. The signs follow no standard code: the word beside each carries the meaning. */
export const hazards: Record<HazardId, Hazard> = {
  'lethal-voltage': {
    word: 'Lethal voltage',
    sentence:
      'Isolate, lock out and prove dead with a meter that you have just tried on a known source: supply, DC bus and motor terminals of a drive carry voltage that kills.',
    strokes: '',
    fills: 'M27 7 13 27h9l-3 14 16-21h-10l5-13z',
  },
  'stored-energy': {
    word: 'Stored energy',
    sentence:
      'Wait for as long as the label on the drive says, then measure from DC+ to DC−: the capacitors of the DC bus stay charged after the supply is off.',
    strokes: 'M6 24h14M28 24h14M20 11v26M28 11v26M9 14h6M12 11v6M33 14h6',
    fills: '',
  },
  'hanging-axis': {
    word: 'Hanging axis',
    sentence:
      'Support or pin a vertical axis before you switch off or unplug anything: its brake may be worn, or may open when you do not expect it.',
    strokes: 'M9 8h30M24 8v7M14 15h20v12H14zM24 31v9M19 36l5 5 5-5',
    fills: '',
  },
  'unexpected-motion': {
    word: 'Unexpected motion',
    sentence:
      'Keep everybody out of reach of the machine and lock out every source of energy: an axis can move as soon as power, brake or control comes back.',
    strokes: 'M17 17h14v14H17zM13 24H5M9 19l-5 5 5 5M35 24h8M39 19l5 5-5 5',
    fills: '',
  },
  'arc-flash': {
    word: 'Arc flash',
    sentence:
      'Stay out of a live cabinet unless you are qualified and wear what the assessment of the site asks for: a probe that slips can start an arc that burns from a distance.',
    strokes: 'M24 5v9M24 34v9M5 24h9M34 24h9M11 11l6 6M31 31l6 6M37 11l-6 6M17 31l-6 6',
    fills: 'M24 17l3 4 5 3-5 3-3 4-3-4-5-3 5-3z',
  },
  'test-voltage': {
    word: 'Test voltage',
    sentence:
      'Disconnect the drive and warn everybody near both ends of the cable: an insulation tester puts a dangerous voltage on the conductors, and the winding holds a charge afterwards.',
    strokes: 'M8 30a16 16 0 0 1 32 0zM24 30l7-9M14 30v9M34 30v9M11 42h6M31 42h6',
    fills: '',
  },
  'hot-surface': {
    word: 'Hot surface',
    sentence:
      'Let motor, braking resistor and heat sink cool before you touch them, or wear gloves made for it: they burn skin long after the machine has stopped.',
    strokes: 'M7 39h34M14 32c-4-5 4-8 0-13s2-8 0-11M24 32c-4-5 4-8 0-13s2-8 0-11M34 32c-4-5 4-8 0-13s2-8 0-11',
    fills: '',
  },
};
