/**
 * What a shared visit mostly consists of. Both ends know it, so a link need not carry it. Part of share version 1: a
 * changed letter makes old links unreadable. New fields are shared too, only less compactly.
 */
const time = '"2026-01-01T10:00:00+01:00"';
const words =
  'looked not-permitted known control-off on-enable on-acceleration position-or-cable when-hot now-and-then unknown ' +
  'nothing burnt wet chafed trips no-trip not-done free stiff brake-drags not-checked off connected after-trip routine ' +
  'random-wound form-wound pre-1970 halving thermosetting table none no yes';

const choices: [string, string][] = [
  ['retry-all', 'powerAllowed result'],
  ['reconnect', 'done'],
  ['unplug-feedback', 'done'],
  ['retry-feedback-off', 'powerAllowed result'],
  ['unplug-device-end', 'done'],
  ['retry-device-end', 'powerAllowed result'],
  ['mechanics', 'found'],
  ['disconnect-leads', 'done'],
  ['support-axis', 'done'],
  ['retry-leads-off', 'powerAllowed result'],
  ['inspect', 'reseated seenDrive seenMotor seenMotorCable seenFeedbackCable'],
  ['symptom', 'when gravityLoaded'],
  ['find-drive', 'observation axesOnDrive indicatedAxis'],
];

const accuracy = 'accuracyPercent accuracyCounts upperLimit leftOpen';
const readings: [string, string][] = [
  ['winding-motor', `UV VW WU ${accuracy}`],
  ['winding', `UV VW WU ${accuracy}`],
  [
    'isolation',
    'suspectedAnyway joinedU joinedV joinedW joinedPE testVoltage windingTemperature temperatureUnit correction cableU ' +
      `cableV cableW cablePE cableEndsChecked bondedU bondedV bondedW motorU motorV motorW motorPE ${accuracy}`,
  ],
  [
    'insulation',
    'occasion U V W PE testVoltage ratedVoltage testMinutes windingTemperature temperatureUnit machineClass correction ' +
      `ambient humidity ${accuracy}`,
  ],
  ['bridge', `busVoltage motorLeads plusU plusV plusW minusU minusV minusW tolerance ${accuracy}`],
  ['lockout-3', 'busVoltage lockedOut waited meterProved'],
  ['lockout-2', 'busVoltage lockedOut waited meterProved'],
  ['lockout-1', 'busVoltage lockedOut waited meterProved'],
];

const each = (ids: string, value: string) =>
  ids
    .split(' ')
    .map((id) => `"${id}":${value}`)
    .join(',');

const step = (id: string, form: string, readAt: string) =>
  `"${id}":{"seq":1,"at":${time},"form":{${form}},"readAt":{${readAt}}}`;

const text = [
  words,
  ...readings.map(([id, ids]) => step(id, each(ids, '" MΩ"'), each(ids, time))),
  ...choices.map(([id, ids]) => step(id, each(ids, '"yes"'), '')),
  '{"calculator":"isolation","form":{"calculator":"winding","form":{"calculator":"insulation","form":{',
  '{"calculator":"bridge","form":{"busVoltage":"0.0 V","motorLeads":"off","plusU":"',
  `{"visit":{"format":"overcurrent-fieldbook-visit","version":1,"id":"","revision":1,"createdAt":${time},`,
  `"changedAt":${time},"seq":1,"machine":"","axis":"","drive":"","motor":"","controllerMessage":"","site":"",`,
  '"person":"","servedAxes":[{"drive":"","axes":[""]}],"instruments":[{"what":"Multimeter","identification":"",',
  '"accuracy":""},{"what":"Insulation tester","identification":"","accuracy":""}],"conditions":{"airTemperature":"',
  '°C","humidity":" %","surroundings":""},"notes":"","steps":{',
].join('');

export const shareDictionary: Uint8Array = new TextEncoder().encode(text);
