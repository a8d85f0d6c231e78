import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';
import { askRetryControlOff, betweenTries, powerCaution, type RetryAnswer } from '../retry.ts';

export const unplugFeedback: Question<DoneAnswer> = {
  title: 'Unplug the feedback connector of this axis',
  instructions: ['Locked out, unplug this axis’s feedback connector at the drive.', 'Leave the control off.'],
  why: 'A short in the feedback cable or device pulls down the drive’s supply and shows as a trip at switch-on.',
  when: 'If it trips at once with the control off.',
  ...askDone,
};

export const retryFeedbackOff: Question<RetryAnswer> = {
  title: 'Switch on with the feedback unplugged',
  instructions: [
    'Close the covers and switch the drive on, control off. Never enable: without feedback an axis runs away.',
    'See whether the same message comes; one of missing feedback is expected. Switch off. Do it as often as the note below says.',
    betweenTries,
  ],
  why: 'If the trip stays away, the feedback cable or device is at fault. If it is still there, the feedback of this axis is not: drive, other axes and what else is connected are left.',
  when: 'If it trips at once with the control off.',
  caution: powerCaution,
  ...askRetryControlOff,
};

export const unplugDeviceEnd: Question<DoneAnswer> = {
  title: 'Plug in at the drive, unplug at the device',
  instructions: [
    'Locked out, plug the feedback cable in again at the drive.',
    'Unplug it at the other end, at the motor or encoder.',
  ],
  why: 'Now the cable is connected and the device is not. The next retry tells one from the other.',
  when: 'If the trip went away with the feedback unplugged.',
  ...askDone,
};

export const retryDeviceEnd: Question<RetryAnswer> = {
  title: 'Switch on with the device unplugged',
  instructions: [
    'Close the covers and switch the drive on, control off. Never enable: without feedback an axis runs away.',
    'See whether the same message comes; one of missing feedback is expected. Switch off. Do it as often as the note below says.',
    betweenTries,
  ],
  why: 'Trips again every time: the feedback cable. No trip: the feedback device, if the trip comes back with it.',
  when: 'If the trip went away with the feedback unplugged.',
  caution: powerCaution,
  ...askRetryControlOff,
};

export const plugFeedback: Question<DoneAnswer> = {
  title: 'Plug the feedback in again',
  instructions: [
    'Locked out, look at the pins of both feedback connectors.',
    'Plug the feedback cable in at the drive and at the device, as it was.',
  ],
  why: 'A plug that is re-seated can mend a loose contact. Then the device would be replaced for nothing. And an axis that is enabled without its feedback runs away.',
  when: 'If the trip went away with only the device unplugged, and before the axis is tried as a whole.',
  undone: 'The feedback was unplugged after this. Plug it in again.',
  ...askDone,
};

export const retryFeedbackOn: Question<RetryAnswer> = {
  title: 'Switch on with the feedback plugged in',
  instructions: [
    'Close the covers and switch the drive on, control off.',
    'See whether the same message comes. Switch off. Do it as often as the note below says.',
    betweenTries,
  ],
  why: 'Trips again every time: the feedback device. No trip: a contact, and nothing is replaced.',
  when: 'If the trip went away with only the device unplugged.',
  caution: powerCaution,
  ...askRetryControlOff,
};
