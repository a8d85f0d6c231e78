import minutes from '../../../content/field/minutes.json' with { type: 'json' };

type StepWithTime = keyof typeof minutes.minutes.steps;

/** The rows of the time budget: the steps of each, and what besides them takes time. */
export const timeBudget: readonly { name: string; steps: readonly StepWithTime[]; waits?: string }[] = [
  { name: 'support the axis', steps: ['support-axis'], waits: 'riggers, a crane' },
  { name: 'lock out, prove dead', steps: ['lockout-1', 'bus-again'], waits: 'the label’s time, or longer' },
  { name: 'look, leads off, idle cores', steps: ['inspect', 'disconnect-leads', 'idle-cores'] },
  { name: 'six readings', steps: ['bridge'], waits: 'a bus that recovers' },
  { name: 'winding, then insulation', steps: ['winding', 'insulation'], waits: 'a winding that cools' },
  { name: 'cable and motor apart', steps: ['winding-motor', 'isolation'], waits: 'drying' },
  { name: 'cable bent, core by core', steps: ['bend-test'] },
  { name: 'braking circuit and input', steps: ['braking', 'input-circuit'], waits: 'a resistor that cools' },
  { name: 'PE first, all leads on', steps: ['connect-pe', 'reconnect'], waits: 'a part that is ordered' },
  { name: 'power on, tries, safety functions', steps: ['retry-all'], waits: 'permits, the owner of the machine' },
];

/** Minutes of a row for one person at the machine, without what it waits for. */
export function minutesOf(steps: readonly StepWithTime[]): number {
  return steps.reduce((sum, step) => sum + minutes.minutes.steps[step], 0);
}
