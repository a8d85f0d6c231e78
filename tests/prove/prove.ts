import { proveField } from './field/prove-field.ts';
import { proveTidy } from './prove-tidy.ts';
import { proveTrace } from './prove-trace.ts';

/**
 * The guide against the simulator. `npm run prove -- [visits] [fault]`: the tidy world, so many visits to every fault and
 * combination. `npm run prove -- field [visits] [seed]`: a mix of causes, axes and people as in the field.
 * `npm run prove -- trace [trips] [seed]`: recordings of simulated trips against their calculator. Prints a table;
 * fails if a goal or a bar is missed.
 */
const [first, second, third] = process.argv.slice(2);
const met =
  first === 'field'
    ? await proveField(Number(second ?? 2000), Number(third ?? 1))
    : first === 'trace'
      ? proveTrace(Number(second ?? 1008), Number(third ?? 1))
      : proveTidy(Number(first ?? 200), second);
process.exitCode = met ? 0 : 1;
