import { formatRounded, inVolts } from '../../kernel/reading/format-reading.ts';
import { type FindingSentences, listed, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import type { OscillationFigures, PhasePlace, TripFrom } from './rule/figures.ts';
import type { TripTraceFinding, TripTraceStep, WantedColumn } from './rule/input.ts';
import * as why from './why-words.ts';

const amps = (value: number) => formatRounded(value, 'A');
const time = (seconds: number) => formatRounded(seconds, 's');
const share = (part: number) => percent(Math.abs(part) * 100);
const hertz = (value: number) => `${Number(Math.abs(value).toPrecision(3))} Hz`;
const phaseNames: Record<PhasePlace, string> = { 0: 'U', 1: 'V', 2: 'W' };

const tripFound: Record<TripFrom, string> = {
  typed: 'as you stated it',
  'time-zero': 'where the time of the file is zero',
  'currents-end': 'where the currents end',
  'file-end': 'the end of the file',
};

const swings: Record<OscillationFigures['of'], string> = {
  'torque-current': 'torque-making current',
  torque: 'torque command',
  current: 'current',
  speed: 'speed',
};

const fastRise = ({ of, rise, allowed, seconds }: { of: string; rise: number; allowed: number; seconds: number }) =>
  `${of === 'phase' ? 'a current' : 'the vector of the three currents'} rose by ${amps(rise)} in one sample of ${time(seconds)}. Through the whole winding it can rise by ${amps(allowed)} at the most.`;

/** A sampling that a recorder has: with one digit, and rather faster. */
function sampling(seconds: number): string {
  const power = 10 ** Math.floor(Math.log10(seconds));
  return time(Math.floor((seconds / power) * (1 + 1e-9)) * power);
}

/** Nothing if another sampling does not help. */
const fasterTells = (needed: number | undefined) =>
  needed === undefined ? '' : ` A recording with a sample every ${sampling(needed)} or faster would tell.`;

const wantedColumns: Record<WantedColumn, string> = {
  'third-current': 'all three currents',
  bus: 'the bus voltage',
  speed: 'the speed in min⁻¹',
  torque: 'the torque command',
  'after-trip': 'some samples after the trip, or a mark at it',
  'as-measured': 'each sample as measured, with the filter off',
  longer: 'at least half a second before the trip, with the axis moving',
};

export const tripTraceFindings: FindingSentences<TripTraceFinding> = {
  'file-missing': () => 'There is no recording yet. The data of the motor alone say nothing.',
  'points-only': () =>
    'A trace points; it proves no part good or bad. Nothing is replaced for it: the measurements decide.',
  'trace-read': ({ rows, sampleSeconds, tripSeconds, tripFrom }) =>
    `${rows} rows, one every ${time(sampleSeconds)}. The trip is taken at ${time(tripSeconds)}, ${tripFound[tripFrom]}.`,
  'trip-not-recorded': () =>
    'The currents do not end in the file, so its last sample is taken for the trip. State the moment if it is another one.',
  'slope-for': (slope) =>
    `Current slope, speaks for a short circuit: ${fastRise(slope)} Its path is shorter: output stage, cable, or a part of the winding.`,
  'slope-of-one': ({ phase, ...slope }) =>
    `Current slope, speaks for a path to earth, a short circuit, or the sensor of ${phaseNames[phase]}: ${fastRise(slope)} Nothing shows that a second sensor saw it too.`,
  'slope-against': ({ rise, allowed, seconds, samples }) =>
    `Current slope, speaks against a hard short circuit: the current took ${samples} samples up to the trip level and rose by ${amps(rise)} in one of ${time(seconds)} at the most. The bus alone drives ${amps(allowed)} through the winding in that time. A leak that lets only a part of the current through is not excluded.`,
  'slope-nothing': ({ why: reason, needed }) =>
    `No statement on the current slope: ${why.slopeSilences[reason]}${fasterTells(needed)}`,
  'sum-for': ({ share: part }) =>
    `Sum of the currents, speaks for a path to earth: the three do not add up, by up to ${share(part)} of the highest current. A current sensor that reads wrong does the same.`,
  'sum-of-one': ({ phase, share: part }) =>
    `Sum of the currents, speaks for the sensor of ${phaseNames[phase]} or a path to earth from ${phaseNames[phase]}: the sum follows that current, with ${share(part)} of it.`,
  'sum-offset': ({ share: part }) =>
    `Sum of the currents, speaks for a current sensor: the three are off by the same amount all the time, ${share(part)} of the highest current.`,
  'sum-against': ({ share: part }) =>
    `Sum of the currents, speaks against a path to earth: the three add up within ${share(part)} of the highest current, up to the trip level.`,
  'sum-nothing': ({ why: reason }) => `No statement on the sum of the currents: ${why.sumSilences[reason]}`,
  'ordinary-for': ({ amps: highest, share: part, seconds, supply, earth, core }) =>
    `Ordinary currents, speak for the drive itself or its current sensing: it tripped while no current was above ${amps(highest)}, ${share(part)} of the trip level. A short circuit that rose and was cut off between two samples of ${time(seconds)} looks the same${earth === 'excluded' ? '' : ', and so does a path to earth in a phase without a sensor of its own'}. Load, tuning and commutation would show${supply === 'steady' ? ', and so would the supply' : '; the supply is not excluded'}.${core === 'excluded' ? '' : ' An open core keeps the currents low, so it is not excluded.'}`,
  'ordinary-nothing': ({ why: reason, needed }) =>
    `No statement on a trip without a high current: ${why.ordinarySilences[reason]}${fasterTells(needed)}`,
  'rotation-for': ({ hertz: measured, expected }) =>
    `Frequency, speaks for encoder or commutation: before the trip the currents turned with ${hertz(measured)}, and by the speed it should be ${hertz(expected)}. Earlier the two agreed.`,
  'rotation-nothing': ({ why: reason, shown }) =>
    `No statement on frequency and speed: ${why.rotationSilences[reason]}${shown === undefined ? '' : ` By the file there are ${Number(shown.toPrecision(2))}. Look at pole pairs, unit of the speed and gear again.`}`,
  'speed-jump-for': ({ share: part, seconds }) =>
    `Speed, speaks for the encoder: its signal jumped by ${share(part)} of the highest speed in ${time(seconds)}. No mass does that, unless it hits a stop.`,
  'zero-for': ({ phase, seconds, turns }) =>
    `Phase ${phaseNames[phase]}, speaks for an open core: it carried nothing for ${time(seconds)} while the other two did, and the motor turned by ${Number(turns.toPrecision(2))} of an electrical turn. A sensor that reads nothing looks the same, and so does a path to earth if one of the three currents is computed.`,
  'zero-against': ({ turns }) =>
    `Phases, speak against a core that was open for long: in the last ${Number(turns.toPrecision(2))} electrical turns each carried current. One that opened just at the trip is not excluded.`,
  'zero-nothing': ({ why: reason }) => `No statement on an open core: ${why.zeroSilences[reason]}`,
  'oscillation-for': ({ of, hertz: frequency, cycles, share: part }) =>
    `Oscillation, speaks for a control loop or a resonance: the ${swings[of]} swung with ${hertz(frequency)} up to the trip, for ${Math.floor(cycles)} cycles or more, by ${share(part)} of its highest figure. A commutation that is off shakes the speed too.`,
  'oscillation-against': ({ share: part }) =>
    `Oscillation, speaks against an unstable loop: no regular swing above ${share(Math.max(part, 0.01))} was found before the trip.`,
  'oscillation-nothing': ({ why: reason }) => `No statement on an oscillation: ${why.oscillationSilences[reason]}`,
  'motion-lost': ({ share: part, seconds }) =>
    `Load, speaks for the mechanics: the motor lost ${share(part)} of its speed while it drove in that direction, and the current rose over ${time(seconds)}. A motor that makes no torque from its current, by commutation, magnets, an open core or a sensor, looks the same.`,
  'motion-against-torque': ({ share: part }) =>
    `Speed, speaks for the commutation: the motor gained ${share(part)} of its highest speed against its own torque command. A weight that pulls it, or a current sensor that reads wrong, looks the same.`,
  'motion-stalled': ({ seconds }) =>
    `Load, speaks for the mechanics: a strong torque did not move the shaft for ${time(seconds)}. A brake that is shut, a jam; or a motor that makes no torque from its current, by commutation, magnets, an open core or a sensor.`,
  'motion-load': ({ growth }) =>
    `Load, speaks for the mechanics: at the same speed the motor took ${Number(growth.toPrecision(2))} times the current that it took at first. An encoder that slips, or a current sensor that reads wrong, looks the same.`,
  'motion-nothing': ({ why: reason }) => `No statement on the load: ${why.motionSilences[reason]}`,
  'bus-braking': ({ before, most, percent: rise, inVolts: known }) =>
    `Bus, speaks for the braking circuit: it rose by ${percent(rise)}${known ? `, from ${inVolts(before)} to ${inVolts(most)},` : ''} while the motor slowed down, and nothing held it.`,
  'bus-supply': ({ before, least, percent: fall, inVolts: known }) =>
    `Bus, speaks for the supply: it fell by ${percent(fall)}${known ? `, from ${inVolts(before)} to ${inVolts(least)}` : ''}. A drive that is short of voltage loses control of its currents. A current that a sensor does not show pulls the bus down too.`,
  'bus-against': ({ percent: moved }) =>
    `Bus, speaks against supply and braking circuit: it moved by ${percent(Math.max(moved, 0.1))} at the most before the trip.`,
  'bus-nothing': ({ why: reason }) => `No statement on the bus: ${why.busSilences[reason]}`,
};

export const tripTraceSteps: StepSentences<TripTraceStep> = {
  'open-the-file': () => 'Open the file of the recording.',
  'look-at-moment': () =>
    'Look at the drawing: is the line at the trip? If not, state its moment, since every rule looks at what is before it.',
  'state-inductance': () => 'State the inductance of the motor: the slope, the safest of the rules, needs it.',
  'state-smaller': () =>
    'If the data sheet states two inductances, along the magnets and across them, enter the smaller one and say so: then less of the rise may be the motor’s own.',
  'state-level': () => 'State the current at which the drive trips.',
  'state-storing': () =>
    'State how the recorder stores the currents: the manual of the drive or of the scope says whether it filters.',
  'state-sensors': () => 'State how many current sensors the drive has: the sum of the currents needs it.',
  'state-pairs': () => 'State the pole pairs of the motor: half the number of poles on its nameplate or data sheet.',
  'record-so': ({ columns, seconds }) =>
    `A recording would tell more with ${listed([...(seconds === undefined ? [] : [`a sample every ${sampling(seconds)} or faster`]), ...columns.map((one) => wantedColumns[one])])}. Set it so now, as far as the drive can; don’t make it trip for that.`,
  'check-bridge': () => 'Locked out and proven dead, test the output stage with the leads off.',
  'measure-insulation': () => 'Locked out and proven dead, measure motor and cable to earth.',
  'measure-winding': () =>
    'Locked out and proven dead, measure the three windings through the cable, and once more while somebody bends it.',
  'check-feedback': () =>
    'Look at encoder, its cable and both plugs. Ask whether motor, encoder or drive was exchanged: then commutation and phase order come first.',
  'check-mechanics': () =>
    'With the axis supported and locked out, move it by hand or by its means: jam, bearing, brake. Read the current at slow speed against an earlier one.',
  'check-tuning': () =>
    'Ask what was changed: gains, ramps, load, a coupling. Compare the parameters with the last known good ones.',
  'check-braking': () =>
    'Look at supply and braking circuit: fuses and phases of the supply, the resistor against its plate, locked out and proven dead.',
  'compare-sensors': () =>
    'With the drive powered but not enabled, read its currents on the display. They should be zero, all three alike.',
  'measure-parts': () =>
    'Follow the guided visit. What the trace points to may be looked at first; nothing is left out for it.',
};
