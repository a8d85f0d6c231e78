/** Words of invented articles about measuring in general: enough of them that no two paragraphs are alike. */
const list = (text: string) => text.split(', ');

export const subjects = list(
  'Contact resistance, Shunt readings, Capacitor leakage, Coil inductance, Ripple of a supply, Phase angle, Cable capacitance, Winding warmth, Screen bonding, Insulation of a long cable, Fuse voltage drop, Sensor supply',
);
export const aspects = list(
  'the first reading, choosing the range, lead and clip errors, settling, zeroing, noise from the mains, repeating, loading by the meter, drift over a shift, keeping the record',
);
export const things = list(
  'the meter, the test lead, the terminal block, the reference resistor, the screen, the guard, the specimen, the bench supply, the winding, the cable end, the filter, the probe tip, the clamp, the divider, the display, the adapter, the enclosure, the battery',
);
export const quantities = list(
  'the resistance, the voltage, the leakage current, the offset, the noise, the phase shift, the ratio, the ripple, the contact drop, the charge, the slope, the peak, the mean, the uncertainty, the settling curve, the bandwidth',
);
export const causes = list(
  'moisture on the surface, a loose clip, a warm junction, stray capacitance, mains hum, a worn contact, dust in the socket, a flat battery, self-heating, an oxide film, a bent pin, vibration, an open screen, a ground loop, condensation, a second path to earth',
);
export const verbs = list('rises, falls, drifts, settles, jumps, recovers, flattens, wanders, doubles, halves, lags');
export const acts = list(
  'write down, repeat, compare, shield, subtract, average, label, inspect, photograph, estimate, plot, question',
);
export const adverbs = list(
  'slowly, at once, within a minute, only after a pause, more than expected, hardly at all, from one day to the next, with every touch, in humid weather, by a few counts',
);
export const sentences = [
  'When {quantity} {verb} {adverb}, suspect {cause} before you suspect {thing}.',
  'First {act} {quantity}, then look at {thing} again and note whether it {verb} {adverb}.',
  'A reading says little until {thing} has rested, because {cause} takes its time.',
  'On a long run {quantity} {verb} {adverb}, because {cause} adds to what {thing} contributes.',
  'Keep {thing} away from {other}, since {cause} can change {quantity}.',
  'If {thing} was moved, {act} {quantity} and treat the earlier value as a guess.',
  'Most surprises come from {cause}, and only a few from {thing} itself.',
  'A difference is real only if {quantity} {verb} {adverb} in both directions.',
  'You can {act} {quantity} without opening {thing}, as long as {cause} is ruled out.',
  'Two people should {act} {quantity} separately, because {cause} is easy to miss on {thing}.',
  'Never trust {thing} alone, for {cause} often makes {quantity} look better than it is.',
  'To find out whether {thing} or {other} is at fault, exchange them and {act} {quantity}.',
  'It helps to {act} {quantity} once with {thing} and once without, and to keep both results.',
  'Where {cause} cannot be avoided, {act} {quantity} at three points and draw the line between them.',
];
export const headings = list(
  'What is being measured, Before you connect, The reading step by step, What spoils the result, How to judge the value, What to write down',
);
