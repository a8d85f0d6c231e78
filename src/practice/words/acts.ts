import { inspectedPartNames } from '../../visit/steps/inspect/question.ts';
import type { Action, Joint, PlainAct, Refusal, Result } from '../case/action.ts';
import type { Mode } from '../simulator/measure.ts';

/** Text of the button, and of the entry in the list of acts. */
export const actTexts: Record<PlainAct, string> = {
  'switch-off': 'Switch the supply off',
  'lock-out': 'Lock and tag the supply, keep the key, try to start',
  'take-lock-off': 'Close the covers and take the lock off',
  'prove-meter': 'Prove the meter on a known source',
  'wait-minute': 'Wait a minute',
  'wait-label': 'Wait the time on the drive’s label',
  'wait-room-temperature': 'Leave it for hours, until the motor is as warm as the room',
  support: 'Support the axis on its prop',
  'take-support-away': 'Take the prop away',
  look: 'Look at all parts, and re-seat the drive’s plugs last',
  mechanics: 'See whether the axis moves freely',
  'dry-connector': 'Dry the motor connector',
  'idle-cores-to-pe': 'Join brake and sensor cores at the drive end and put them on the PE bar',
  'bend-cable': 'Bend the moving cable and hold it',
  'let-cable-go': 'Let the cable go',
  thermometer: 'Take the temperature of the motor',
  'switch-on': 'Switch the supply on, control off',
  reset: 'Reset the trip',
  enable: 'Enable the axis at rest',
  run: 'Run it as the machine does',
};

const jointTexts: Record<Joint, string> = {
  leads: 'leads U, V and W at the drive',
  'lead-U': 'lead U at the drive',
  'lead-V': 'lead V at the drive',
  'lead-W': 'lead W at the drive',
  'lead-PE': 'PE core at the drive',
  'lead-screen': 'screen at the drive’s clamp',
  'motor-plug': 'motor connector',
  'feedback-drive': 'feedback connector at the drive',
  'feedback-device': 'feedback connector at the device',
  'idle-cores': 'brake and sensor cores at the drive',
  'braking-resistor': 'braking resistor at the drive',
  'dc-link': 'DC link to the drives beside it',
  'neighbour-leads': 'motor leads of the other axis at the drive',
  'neighbour-feedback': 'feedback of the other axis at the drive',
  filter: 'output filter on the motor cable',
};

export const joinText = (joint: Joint, on: boolean): string => `${on ? 'Put on' : 'Take off'}: ${jointTexts[joint]}`;

export const modeTexts: Record<Mode, string> = {
  volts: 'Multimeter, DC volts',
  ohms: 'Multimeter, resistance',
  diode: 'Multimeter, diode test',
  milliohms: 'Low-resistance meter, four leads',
  insulation: 'Insulation tester',
};

const places: [prefix: string, name: string][] = [
  ['cable.drive.', 'cable, drive end, '],
  ['cable.motor.', 'cable, motor end, '],
  ['drive.', 'drive terminal '],
  ['motor.', 'motor pin '],
];

/** A point of the axis, such as "cable, drive end, U". */
export function terminalName(node: string): string {
  if (node === 'ground') return 'PE bar of the cabinet';
  if (node === 'motor.frame') return 'motor frame';
  if (node === 'DC-') return 'DC−';
  const place = places.find(([prefix]) => node.startsWith(prefix));
  return place === undefined ? node : place[1] + node.slice(place[0].length);
}

export function actionText(action: Action): string {
  switch (action.act) {
    case 'join':
      return joinText(action.joint, action.on);
    case 'bond':
      return action.except === undefined
        ? 'Take the bonding wires off'
        : `Bond all conductors but ${action.except} to ground, at the drive end`;
    case 'measure': {
      const { mode, red, black, setting } = action;
      const extras = [
        mode === 'insulation' ? `${setting.testVolts} V, one minute` : undefined,
        setting.range === undefined ? undefined : 'range by hand',
        setting.zeroed ? 'leads zeroed' : undefined,
        setting.discharge ? 'discharged after it' : undefined,
      ].filter((extra) => extra !== undefined);
      return `${[modeTexts[mode], ...extras].join(', ')}: red on ${terminalName(red)}, black on ${terminalName(black)}`;
    }
    default:
      return actTexts[action.act];
  }
}

const refusals: Record<Refusal, string> = {
  'power-is-on': 'Not possible: the supply is on.',
  'power-is-off': 'Not possible: the supply is off.',
  'lock-is-on': 'Not possible: your lock is on.',
  'no-lock': 'There is no lock.',
  'trip-stands': 'Nothing happens: the trip stands. Reset it first.',
  'leads-are-on': 'Not possible: leads are still on the drive.',
};

/** What a person sees of an act. */
export function resultText(result: Result): string {
  switch (result.code) {
    case 'done':
      return '';
    case 'refused':
      return refusals[result.why];
    case 'moves-freely':
      return 'Nothing is stiff, and the brake does not drag.';
    case 'temperature':
      return `${result.celsius} °C.`;
    case 'tripped':
      return 'It trips on overcurrent.';
    case 'other-message':
      return 'It stops with another message: not the overcurrent trip.';
    case 'no-trip':
      return 'No trip.';
    case 'reading':
      return result.shown.text;
    case 'seen':
      return Object.entries(result.seen)
        .map(([part, damage]) => `${inspectedPartNames[part as keyof typeof result.seen]}: ${damage}.`)
        .join(' ');
  }
}
