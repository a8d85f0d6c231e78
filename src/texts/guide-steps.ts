import { formatRounded, limitValue } from '../calc/index.ts';
import type { InspectedPart, StepId, Symptom } from '../guide/answers.ts';
import type { Problem } from '../guide/steps.ts';

export interface StepText {
  title: string;
  /** What to do, one action a line. */
  instructions: string[];
  /** Why, in a sentence or two. */
  why: string;
  /** When it comes, as long as it lies ahead. */
  when: string;
  /** The caution that stands above the instructions. */
  caution?: string;
}

const touch = () => formatRounded(limitValue('touch-voltage'), 'V');

/** The points of the proof, in the order of the fields. */
const proveDead = () => [
  `Prove the PE that you measure to: no voltage between the drive’s PE and bare metal of the machine, then at most ${formatRounded(limitValue('pe-dead-short'), 'Ω')}.`,
  'Prove the meter on a known source, AC and DC.',
  'Supply terminals: each to each, each to PE. AC, then DC.',
  'U, V, W: each to each, each to PE. AC, then DC. The motor stands still.',
  'DC+ to DC−, DC+ to PE, DC− to PE: DC.',
  'Prove the meter again. Of each group type the highest reading, without its sign.',
];

const pause = () => formatRounded(limitValue('work-pause'), 'min');

const lockout: StepText = {
  title: 'Lock out, wait, measure the DC bus',
  instructions: [
    'Switch off, lock out and tag every supply after your site’s procedure, control and brake supplies and a shared bus too. Keep the key, and try to start.',
    'Block or relieve every other stored energy: springs, pressure, hanging loads.',
    'Wait the time on the drive’s warning label.',
    ...proveDead(),
  ],
  why: `The bus capacitors stay charged after switch-off, filters keep DC at the supply terminals, and a motor that turns feeds U, V and W. Only the measurement says that all of them are dead: go on when every point is below ${touch()}.`,
  when: 'Before every step near conductors, and again after every step with power.',
  caution: 'Until the bus is measured, everything in the drive counts as live. Only qualified persons measure.',
};

const powerCaution =
  'This step needs power. Covers shut, nobody near the machine, and only if you are qualified and permitted to switch on.';

const enableCaution =
  'This step needs power and enables the axis. Releasing the stop opens the brake. Covers shut, nobody in reach of any motion, and only if you are qualified and permitted.';

export const stepTexts: Record<StepId, StepText> = {
  'find-drive': {
    title: 'Find the drive and its output',
    instructions: [
      'Write down the controller’s message. It may name every axis of a drive that serves several.',
      'If you are qualified and permitted to look while energised: look at the drives’ own indications while the trip stands, and touch nothing.',
      'If you are not, do not open the cabinet: find the drive from the drawings or an earlier record.',
      'Note the drive’s outputs, with their terminal labels and axes.',
    ],
    why: 'The indication is gone after a reset. Kept in the record, the next visit need not look again.',
    when: 'First.',
    caution: 'Looking into an open, energised cabinet is energised work.',
  },
  symptom: {
    title: 'What was live or moving?',
    instructions: [
      'Choose what had come on or begun last when it tripped.',
      'Say whether an axis can fall. Count every axis whose brake opens with this enable: those of this drive, and those of a group that is enabled together.',
    ],
    why: 'A bad part usually shows with the first thing that stresses it. This says what to measure first.',
    when: 'After the drive is found.',
  },
  'lockout-1': lockout,
  'lockout-2': { ...lockout, title: 'Lock out again, wait, measure the DC bus' },
  'lockout-3': { ...lockout, title: 'Lock out again, wait, measure the DC bus' },
  'prove-again': {
    title: 'Prove it dead again',
    instructions: [
      'Before you touch anything: look whether your lock and tag are on every supply, and the key is with you. If not, lock out anew. Try to start.',
      'Look whether anything was changed while you were away: leads, connectors, covers, supports. Wait the time on the label if it can have had power.',
      ...proveDead(),
    ],
    why: `It was proved dead in an earlier stretch of work. Since then there was a break of more than ${pause()}, another day, another device, or a clock that was set back. A lock can be taken off and a bus can recover meanwhile.`,
    when: `After a break of more than ${pause()}, on another day or another device, before anything is touched or switched on.`,
    caution: 'Until it is measured again, everything in the drive counts as live. Only qualified persons measure.',
  },
  'bus-again': {
    title: 'Measure the DC bus again',
    instructions: [
      'Still locked out. Nobody moves the axis.',
      'Prove the meter on a known DC source. Measure DC+ to DC−, DC+ to PE, DC− to PE. Prove the meter again. Type the highest reading, without its sign.',
    ],
    why: 'An axis that is moved by hand with its leads on charges the bus, and so can the voltage of an instrument that measures at it.',
    when: 'After the axis was moved by hand, and after readings at the output stage.',
    caution: 'Until the bus is measured again, it counts as charged.',
  },
  inspect: {
    title: 'Look at all parts',
    instructions: [
      'Look for burnt, wet or chafed parts: drive, motor and its connector, motor cable, feedback cable.',
      'Write down what you see, and take a photograph before you touch anything.',
      'Last, and only if you want to: seat the drive’s plugs and boards anew. Wear a wrist strap, hold a board by its edges, and write down which.',
    ],
    why: 'A burnt or wet part saves you hours. A loose plug trips a drive that has no fault; one that you moved may have mended it. Common practice.',
    when: 'After the first lockout, before any measurement.',
  },
  'unplug-feedback': {
    title: 'Unplug the feedback connector of this axis',
    instructions: [
      'Locked out, unplug this axis’s feedback connector at the drive.',
      'If the drive serves several axes and it still trips, unplug the others’ too before you call the drive bad.',
      'Leave the control off.',
    ],
    why: 'A short in the feedback cable or device pulls down the drive’s supply and shows as a trip at switch-on.',
    when: 'If it trips at once with the control off.',
  },
  'retry-feedback-off': {
    title: 'Switch on with the feedback unplugged',
    instructions: [
      'Close the covers and switch the drive on, control off. Never enable: without feedback an axis runs away.',
      'See whether it trips again; a message of missing feedback is expected. Switch off.',
    ],
    why: 'If the trip is gone, the feedback cable or device is at fault. If it is still there, the drive is bad.',
    when: 'If it trips at once with the control off.',
    caution: powerCaution,
  },
  'unplug-device-end': {
    title: 'Plug in at the drive, unplug at the device',
    instructions: [
      'Locked out, plug the feedback cable in again at the drive.',
      'Unplug it at the other end, at the motor or encoder.',
    ],
    why: 'Now the cable is connected and the device is not. The next retry tells one from the other.',
    when: 'If the trip went away with the feedback unplugged.',
  },
  'retry-device-end': {
    title: 'Switch on with the device unplugged',
    instructions: [
      'Close the covers and switch the drive on, control off. Never enable: without feedback an axis runs away.',
      'See whether it trips again; a message of missing feedback is expected. Switch off.',
    ],
    why: 'Trips again: the feedback cable. No trip: the feedback device, if the trip comes back with it.',
    when: 'If the trip went away with the feedback unplugged.',
    caution: powerCaution,
  },
  'plug-feedback': {
    title: 'Plug the feedback in again',
    instructions: [
      'Locked out, look at the pins of both feedback connectors.',
      'Plug the feedback cable in at the drive and at the device, as it was.',
    ],
    why: 'A plug that is seated anew can mend a loose contact. Then the device would be replaced for nothing. And an axis that is enabled without its feedback runs away.',
    when: 'If the trip went away with only the device unplugged, and before the axis is tried as a whole.',
  },
  'retry-feedback-on': {
    title: 'Switch on with the feedback plugged in',
    instructions: ['Close the covers and switch the drive on, control off.', 'See whether it trips again. Switch off.'],
    why: 'Trips again: the feedback device. No trip: a contact, and nothing is replaced.',
    when: 'If the trip went away with only the device unplugged.',
    caution: powerCaution,
  },
  mechanics: {
    title: 'Look at the mechanics',
    instructions: [
      'Locked out, secure the axis against falling before you touch it.',
      'An axis that can’t fall: see whether it moves as freely as it should by hand. Move it slowly: a turning motor generates a voltage.',
      'An axis that can fall is not moved by hand. Look at its guides, its balance and its brake.',
    ],
    why: 'A stiff axis or a brake that drags draws the same current as a fault. Replacing a drive does not free it.',
    when: 'If it trips on acceleration, at one position, when hot, or now and then.',
    caution: 'Never release the brake of an axis that hangs on it.',
  },
  'disconnect-leads': {
    title: 'Take the motor leads off the drive',
    instructions: [
      'Check the lockout once more, then take U, V and W off the drive.',
      'The PE core stays on for now: with power on, the motor frame needs it.',
      'Mark the leads, and keep their ends apart and insulated.',
    ],
    why: 'The windings join U, V and W, so a fault looks balanced while they are on. And an insulation tester must never reach the drive.',
    when: 'Before the retry without motor and before any measurement.',
  },
  'support-axis': {
    title: 'Support every axis that can fall',
    instructions: [
      'Name each axis that this enable releases: those of this drive, and those of a group that is enabled together. Not only the one that tripped.',
      'By your site’s procedure, bring the load of each that can fall to rest on a prop, pin or block, so that it can’t fall with its brake open.',
      'Nobody is below one while its brake alone holds it. Have a second look.',
    ],
    why: 'One enable opens all their brakes. A trip then switches off every stage of the drive, and a neighbour falls that had no fault.',
    when: 'Before anything is touched or switched on, if an axis can fall.',
    caution: 'A hanging axis kills. Nobody below it, ever.',
  },
  'support-again': {
    title: 'Look at every support again',
    instructions: [
      'Go to each axis that can fall. Its load still rests on its prop, pin or block, and nobody has moved it.',
      'If it does not, support it anew before anything else.',
    ],
    why: `The supports were seen in an earlier stretch of work. Since then there was a break of more than ${pause()}, another day, another device, or a clock that was set back.`,
    when: `After a break of more than ${pause()}, on another day or another device, if an axis can fall.`,
    caution: 'A hanging axis kills. Nobody below it, ever.',
  },
  'retry-leads-off': {
    title: 'Enable with the motor leads off',
    instructions: [
      'Close the covers. The lead ends are apart and insulated, and the PE core is on.',
      'Switch on, release the stop, enable the axis once.',
      'See whether it trips again. Switch off.',
    ],
    why: 'Trips again: the drive is bad, whatever the motor is. No trip is a good sign and no proof.',
    when: 'If it trips when the axes are enabled.',
    caution: enableCaution,
  },
  bridge: {
    title: 'Six readings at the output stage',
    instructions: ['Take the six readings with a multimeter and type them in.'],
    why: 'It finds shorted, leaky and open switches.',
    when: 'Always, with the motor leads off.',
  },
  insulation: {
    title: 'Insulation of motor and cable',
    instructions: [
      'U, V and W are off the drive. Now take the PE core off it too, as the last lead: left on, PE reads a dead short even when it is broken.',
      'Test at the drive end, cable and motor joined. The free leads carry the test voltage too: keep their ends apart.',
      'Take encoder, temperature sensor and brake off the test, with the load on its support before the brake connector opens.',
      'Discharge the winding after each test, as long as the calculator says, before anyone touches it.',
    ],
    why: 'A motor or cable with bad insulation destroys the next drive.',
    when: 'Always, whatever the drive is: a bad drive may have been killed by its motor.',
    caution: 'The tester’s voltage is dangerous too. Nobody touches the leads or the other end.',
  },
  isolation: {
    title: 'Cable or motor',
    instructions: [
      'Motor leads and PE core off the drive, if they are on again. Discharge before each change of leads.',
      'For the cable alone, lift its screen too. For the motor alone, the earth lead goes on bare metal of its shell.',
      'Test the cable alone, then the motor alone, as the calculator asks.',
    ],
    why: 'The joined reading does not tell which is bad, and often both are.',
    when: 'If the insulation does not pass, if the symptom or what you saw points at the cable, or if it still trips though everything passed.',
  },
  winding: {
    title: 'Winding resistance',
    instructions: [
      'Discharge first. Plug the motor in again if it is off its cable; the leads stay off the drive.',
      'Measure U–V, V–W and W–U at the drive end, through the cable, leads zeroed.',
    ],
    why: 'A short between phases or an open winding does not show in the insulation to PE.',
    when: 'Unless the motor is proven bad already.',
  },
  'winding-motor': {
    title: 'Winding resistance at the motor',
    instructions: ['Discharge first.', 'Measure U–V, V–W and W–U at the motor connector, without the cable.'],
    why: 'Bad here as well: the motor. Good here: the cable.',
    when: 'If the readings through the cable fail, or the cable is bad.',
  },
  'connect-pe': {
    title: 'Put the PE core back on the drive',
    instructions: [
      'Locked out, discharge the winding. Then put the PE core of the motor cable back on the drive, and check it by pulling.',
      'U, V and W stay off, their ends apart and insulated.',
    ],
    why: 'The PE core came off for the insulation test. With power on, the motor frame needs it.',
    when: 'Before any step with power, if the insulation was tested.',
  },
  reconnect: {
    title: 'Connect everything again',
    instructions: [
      'Discharge the winding. Connect PE and the screen first, then U, V and W, as they were.',
      'Plug in feedback, brake and sensors again. An axis that is enabled without its feedback can run away.',
      'Check every terminal by pulling, and close the covers.',
    ],
    why: 'Every measurement passed, so the axis may be tried as a whole.',
    when: 'If every measurement passes.',
  },
  'retry-all': {
    title: 'Try the axis',
    instructions: [
      'If the axis can fall: it is still on its support. Enable once: no trip, no jerk, no hum that grows. On the support nothing proves the brake; the support goes only by your site’s procedure.',
      'Move slowly, then as the machine does.',
      'See whether it trips again. Switch off.',
    ],
    why: 'If the trip goes on though every check passes, the drive is replaced. If it stays away, the readings are your baseline.',
    when: 'If every measurement passes.',
    caution: enableCaution,
  },
};

export const neverSwap =
  'Never exchange parts between axes to find this fault. A bad motor or cable kills the good drive that you put on it, and then you have two.';

interface SymptomText {
  /** What was live or moving, as it is asked. */
  live: string;
  /** The moment that follows from it. */
  label: string;
  /** What it makes likely, and why. */
  likely: string;
}

export const symptomTexts: Record<Symptom, SymptomText> = {
  'control-off': {
    live: 'Only the bus was up: the control was still off',
    label: 'At once when the drive gets power, control still off',
    likely: 'Feedback cable, feedback device, or the drive itself: nothing is switched through to the motor yet.',
  },
  'on-enable': {
    live: 'The pulses had just come on, and the load stood still',
    label: 'When the axes are enabled',
    likely: 'Output stage, motor or motor cable: with the enable, voltage reaches the motor for the first time.',
  },
  'on-acceleration': {
    live: 'The load was moving: speeding up or braking',
    label: 'On acceleration or braking',
    likely:
      'Mechanical overload, a brake that drags, tuning, or insulation that fails under load: speeding up and braking draw the highest current.',
  },
  'position-or-cable': {
    live: 'A cable was being bent, or the axis was at one certain place',
    label: 'At one position, or when the cable moves',
    likely: 'A moving cable or its connector: a core breaks or chafes where it bends.',
  },
  'when-hot': {
    live: 'Everything was warm: cold, the same motion runs',
    label: 'When it is hot',
    likely:
      'Motor insulation or winding, or a drive that is poorly cooled: insulation resistance falls with temperature.',
  },
  'now-and-then': {
    live: 'Something else each time, or nobody knows',
    label: 'Now and then',
    likely: 'Contacts, moisture, a cable about to fail, or interference: a fault that is not there while you look.',
  },
};

export const inspectedPartNames: Record<InspectedPart, string> = {
  drive: 'Drive',
  motor: 'Motor and its connector',
  motorCable: 'Motor cable',
  feedbackCable: 'Feedback cable',
};

export const problemTexts: Record<Problem, string> = {
  'indication-contradicts':
    'The drive does not have the output that you noted. A drive can only name an output that it has: the indication is misread, or it is another drive’s. Look again.',
  'not-locked-out': 'Not locked out. Nothing is touched before the supply is locked out and tagged.',
  'not-waited': 'The waiting time has not passed. Wait what the label says, then measure.',
  'meter-not-proved': 'Prove the meter on a known source before and after. A dead meter shows zero on a live bus.',
  'pe-not-proved': 'Prove PE at the drive first. Against a PE that is not connected every point reads zero.',
  'supply-not-measured': 'Type the highest reading at the supply terminals, each to each and each to PE, AC and DC.',
  'supply-live': `Stop. The supply terminals are not shown to be below ${touch()}. Keep away, and find out what feeds them: another supply, or the capacitors of a filter.`,
  'output-not-measured': 'Type the highest reading at U, V and W, each to each and each to PE, AC and DC.',
  'output-live': `Stop. U, V and W are not shown to be below ${touch()}. Keep away, and find out what feeds them: a motor that turns, or the bus.`,
  'bus-not-measured': 'Type the bus voltage that you measured. A waiting time alone proves nothing.',
  'bus-not-discharged': `Stop. The bus is not shown to be below ${touch()}. Keep away and find out what feeds it.`,
  'not-done': 'Confirm when it is done.',
  'power-not-allowed':
    'A result needs power, and you have not confirmed that you may switch on. Confirm it, or choose “not done”.',
  undecided:
    'Something is still open here. Take the measurement that the verdict asks for, or say that you leave it open.',
};
