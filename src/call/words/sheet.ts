import type { Group, Thing } from '../rule/bring.ts';
import { hoursToPlan, type Permit, type Person } from '../rule/plan.ts';
import type { SafetyWord } from '../rule/safety.ts';
import type { Suspect } from '../rule/suspects.ts';
import type { Question } from '../rule/to-ask.ts';
import { reasonText } from './said.ts';

export const sheetTexts = {
  lead: 'Note what the caller says. The sheet says what to ask back and what to bring, and becomes the visit when you are there.',
  first: 'Say first: leave it off, reset nothing, nobody under the axis.',
  next: 'Ask next',
  toSheet: 'Sheet',
  proof:
    'Reported on the phone, nothing measured. A part is proven at the machine, by readings, and never on this sheet.',
  noMoment: 'Without the moment of the trip no part is more suspect than another. Ask for it first.',
  unseen:
    'Nobody saw the moment, so no part is more suspect than another: everything is measured, and every instrument is packed.',
  moment: (label: string, likely: string): string => `${label}. ${likely}`,
  spares: 'Worth having in the car. None is put in without proof: a bad motor or cable destroys the next drive.',
  others: 'Not excluded either',
  byMoment: 'the moment makes it likely',
  begin: 'Begin the visit',
  beginHint:
    'Takes machine, axis and message over. The answers about the trip come along as reported on the phone, and count only once you have confirmed them on site.',
} as const;

/** Why a suspect stands on the sheet. */
export function whySuspect({ reasons, byMoment }: Suspect): string {
  const words = reasons.length === 0 && byMoment ? sheetTexts.byMoment : reasons.map(reasonText).join('; ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export const safetyTexts: Record<SafetyWord, string> = {
  burnt: 'Smoke or a burnt smell: main switch off, keep away, and follow the site’s rules for fire.',
  'under-axis': 'Nobody goes or reaches under the axis. Rope it off: the brake alone holds nobody.',
  prop: 'Those who are trained for it bring the load to rest on a prop, pin or block by the site’s procedure. If that can’t be done without reaching under it, leave it and keep everybody away.',
  'leave-prop': 'The prop stays where it is until somebody on site has taken over.',
  'leave-off': 'Leave it off. Nobody resets it again and again: each try can destroy the next part.',
  'reset-enough': 'It was reset often enough. No more tries, also not “just to see”.',
  'no-other-drive': 'Put in no further drive before motor and cable are measured: they may destroy it.',
  wet: 'Leave it wet, switched off. No compressed air, no heater: the readings must show it as it is.',
  closed: 'Keep the cabinet shut. Take off no lead, pull no plug, swap no part.',
  traces:
    'Before anything is cleared: photograph message, time and the indications that show without opening anything.',
};

const details = {
  'control-off':
    'Does it trip at once with power, or some seconds later? What was unplugged or worked on at the feedback?',
  'on-enable': 'Does it trip before the axis moves at all? Did the brake click?',
  'on-acceleration':
    'With load and without? At each acceleration, or only at the fastest? Does it sound or feel stiff?',
  'on-braking': 'Is there a braking resistor, where is it, and is it hot? What stops or is lowered when it trips?',
  'position-or-cable':
    'At which position exactly, and which cable bends there? Does it come with the axis at rest when somebody moves the cable? Only from what they saw before: nobody tries it now.',
  'when-hot': 'After how many minutes of running? How long must it cool until it runs again? Does the cabinet get hot?',
  'now-and-then': 'Which hours and days? What else starts then? After washing, rain, a change of shift?',
} as const;

/** What to ask, and what the answer decides. */
export const questionTexts: Record<Question, { ask: string; decides: string }> = {
  'can-fall': {
    ask: 'Can the axis fall, or any other that is enabled with it?',
    decides: 'who may be hurt until you come',
  },
  propped: { ask: 'Is it on a prop, pin or block now?', decides: 'who may be hurt until you come' },
  moment: { ask: 'What had come on or begun last when it tripped?', decides: 'what is suspect' },
  ...(Object.fromEntries(
    Object.entries(details).map(([moment, ask]) => [`detail-${moment}`, { ask, decides: 'which suspect comes first' }]),
  ) as Record<`detail-${keyof typeof details}`, { ask: string; decides: string }>),
  again: { ask: 'Each time, sometimes, or did it come once?', decides: 'whether you will find it there' },
  count: { ask: 'How often did it trip, in how many starts?', decides: 'how many tries show anything' },
  changed: { ask: 'What was changed or done before the first trip?', decides: 'what is suspect' },
  'shared-drive': { ask: 'Does the drive serve other axes?', decides: 'how many motors and cables you measure' },
  message: { ask: 'What does the message say, word for word?', decides: 'which drive and axis you go to' },
  tried: { ask: 'What was tried already, and what happened?', decides: 'what may have been damaged since' },
  seen: { ask: 'Photographs of motor, cable and connector, from outside?', decides: 'what you see first' },
  plates: { ask: 'Model and serial number of drive and motor?', decides: 'spare parts and test voltages' },
  switcher: { ask: 'Who may lock out, and who may switch on?', decides: 'whether tries with power are possible' },
  high: { ask: 'Are motor or cable high up?', decides: 'lift, ladder and their permit' },
  spares: { ask: 'Which spare parts are on site?', decides: 'what you load' },
  until: { ask: 'When must it run again?', decides: 'when you come, and what is mended first' },
};

export const groupNames: Record<Group, string> = {
  instruments: 'Instruments',
  leads: 'Leads and small things',
  protection: 'Protection and lockout',
  axis: 'For the axis',
  spares: 'Spare parts',
};

export const thingTexts: Record<Thing, string> = {
  multimeter: 'Multimeter rated for the place, with minimum and maximum hold',
  'proving-unit': 'Proving unit, or a known live source',
  'insulation-tester': 'Insulation tester, 250 to 1,000 V',
  'milliohm-meter': 'Milliohm meter with four leads',
  thermometer: 'Contact thermometer',
  'thermal-camera': 'Thermal camera',
  'current-recorder': 'Current probes and a recorder for three phases',
  'supply-recorder': 'Recorder for supply and 24 V, with minimum hold',
  'inductance-meter': 'Inductance meter',
  'surge-tester': 'Surge tester, or the number of a shop that has one',
  laptop: 'Laptop, cable and program for this drive, its manual, the parameter backup',
  leads: 'Test leads, tips and clips rated as the meter, a spare set',
  'meter-fuses': 'Fuses for the meter, of its exact type',
  'leads-for-bridging': 'Short leads to join U, V and W',
  caps: 'Caps and labels for wires that are taken off',
  'long-lead': 'Test lead as long as the motor cable',
  drying: 'Dry cloths, warm air, new seals',
  lockout: 'Own lock, tags, hasp',
  'arc-and-shock': 'Protective equipment that the site’s assessment names, gloves tested and in date',
  'heat-gloves': 'Gloves made for heat',
  'wrist-strap': 'Wrist strap, for a dead drive only',
  height: 'Harness, or what the site asks for at height',
  prop: 'Prop, pin or blocks rated for the load, or the site has them',
  marks: 'Barrier tape, torch, camera, marker',
  drive: 'Drive of the same model',
  'motor-cable': 'Motor cable of that length',
  motor: 'Motor of the same model',
  'feedback-cable': 'Feedback cable',
  connectors: 'Connector, pins, crimps, seals',
  'braking-resistor': 'Braking resistor',
  'fan-and-filter': 'Fan and filter mats',
  brake: 'Brake relay, its supply, suppressor',
  screens: 'Screen clamps, earth straps',
};

export const personTexts: Record<Person, string> = {
  you: 'You: qualified for this work, and permitted on this machine',
  switcher: 'Somebody who may lock out, and may switch on',
  second: 'A second person, for the load or the moving cable',
  rigger: 'Somebody who can bring the load to rest',
  programmer: 'Somebody who knows the control',
};

export const permitTexts: Record<Permit, string> = {
  lockout: 'Lockout by the site’s procedure',
  'look-live': 'Looking at indications in a live cabinet, only if the site permits it',
  height: 'Work at height',
};

export function minutesText({ least, most }: { least: number; most: number }): string {
  return `${hoursToPlan(least)} hours if the first readings show the part, ${hoursToPlan(most)} if each suspect is looked for. At the machine, waiting for the bus included; travel, permits and the exchange come on top.`;
}
