import { capital } from '../../kernel/words/sentences.ts';
import type { Branch, TripTraceAssessment } from './rule/input.ts';

/** What a trace can point to, as it follows "speaks for". */
export const branchNames: Record<Branch, string> = {
  'short-outside': 'a short circuit in output stage, cable or motor',
  'earth-path': 'a path to earth',
  'inside-drive': 'the drive itself',
  sensing: 'current sensing',
  feedback: 'encoder or commutation',
  'open-core': 'an open core',
  mechanics: 'the load: jam, brake, friction',
  tuning: 'a control loop or a resonance',
  'supply-braking': 'supply or braking circuit',
};

/** The answer in one line. It never names a part as bad. */
export function tripTraceHeadline({ points, findings }: TripTraceAssessment): string {
  if (findings.some(({ code }) => code === 'file-missing')) return 'Still missing: the file of the recording';
  if (points.length === 0) return 'No statement: nothing in this trace stands out';
  const [first = '', ...others] = points.map((branch) => branchNames[branch]);
  return capital([`speaks for ${first}`, ...others].join(', or '));
}
