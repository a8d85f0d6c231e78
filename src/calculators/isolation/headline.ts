import { phases } from '../../kernel/electrics/phases.ts';
import {
  cableEndsFound,
  cableEndsMissing,
  figureHeadline,
  type HeadlineWords,
  headlineFrom,
  testVoltageFound,
  testVoltageMissing,
} from '../../kernel/words/headlines.ts';
import { capital, listed } from '../../kernel/words/sentences.ts';
import { partStatusNames, stageNames } from './part-names.ts';
import type { SeparatePart } from './rule/conviction.ts';
import type { IsolationAssessment, IsolationFinding } from './rule/input.ts';
import { badCores } from './suspect-cores.ts';

const joinedReads = (bad: readonly string[]) =>
  `joined, ${bad.length === phases.length ? 'U, V and W' : listed(bad)} ${bad.length === 1 ? 'fails' : 'fail'}`;
const misfit = () => 'the readings do not fit together: measure again';
const stage = ({ stage: name }: { stage: keyof typeof stageNames }) => stageNames[name].toLowerCase();

/** Of undecided only: a no-go names the parts. */
const words: HeadlineWords<IsolationFinding> = {
  found: {
    ...figureHeadline,
    'good-joined-bad-part': misfit,
    'bad-joined-good-parts': misfit,
    'joined-too-high': misfit,
    'joined-too-low': misfit,
    'joined-needs-bonded': misfit,
    'joined-pe-again-short': () => 'a contact of PE comes and goes: find it',
    'dried-and-good': ({ part }) => `the ${part} passes once it is dry: find the water`,
    'motor-pins-mistaken': () => 'the short is at another pin than PE: check the pin order',
    ...cableEndsFound,
    ...testVoltageFound,
    'cable-pe-low': () => 'the PE core reads to ground: an end or the screen may still be on',
    'stage-length-explains': (f) => `${stage(f)} reads low, but its length may explain it`,
    'cable-pe-length-explains': () => 'the PE core reads low, but its length may explain it',
    'stage-methods-differ': (f) => `${stage(f)}: the methods of correction disagree`,
    'stage-hot': (f) => `${stage(f)} may read low only because the winding is warm`,
    'stage-cold': (f) => `${stage(f)} may be good only because the winding is cold`,
    'stage-too-close': (f) => `${stage(f)} is too close to call`,
    'stage-bound-too-low': (f) => `${stage(f)}: the range is too low to tell`,
    'stage-bound-too-high': (f) => `${stage(f)}: the bound is too high to tell`,
    'again-unclear': ({ part }) => `the second reading of the ${part} does not tell`,
    'cable-pe-unclear': () => 'the reading of the PE core does not tell',
    'joined-pe-higher-than-expected': () => 'PE reads more than a sound conductor should',
    'joined-pe-not-proven': () => 'the PE reading is too coarse',
    'motor-pe-higher-than-expected': () => 'the PE pin of the motor reads too much',
    'motor-pe-not-proven': () => 'the reading of the motor’s PE pin is too coarse',
    'symptom-outweighs-joined': () => 'joined reads good, but the symptom points here: prove each part alone',
    'joined-good': () => 'joined reads good; only the parts alone prove them',
  },
  missing: {
    'stage-incomplete': (f) => `${stage(f)}: ${listed(f.phases)}`,
    'joined-pe-missing': () => 'joined: PE',
    'stage-temperature-needed': () => 'the winding temperature',
    'bonded-row-missing': () => 'the readings with the cores bonded to PE',
    'cable-pe-missing': () => 'cable alone: PE',
    'motor-pe-missing': () => 'motor alone: PE',
    ...testVoltageMissing,
    ...cableEndsMissing,
  },
};

/** "cable proven bad, core W", "cable suspect, core W, not proven bad", "motor proven good". */
function part(name: SeparatePart, { parts, findings }: IsolationAssessment): string {
  const status = parts[name];
  const bad = status === 'proven-bad' || status === 'suspect';
  const cores = bad && name === 'cable' ? badCores(findings) : [];
  const which = cores.length === 0 ? '' : `, ${cores.length === 1 ? 'core' : 'cores'} ${listed(cores)}`;
  return `${name} ${partStatusNames[status]}${which}${status === 'suspect' ? ', not proven bad' : ''}`;
}

/** The verdict's reason in one line: each part with what is proven of it, the worse one first. */
export function isolationHeadline(assessment: IsolationAssessment): string {
  const { verdict, findings, parts } = assessment;
  if (verdict === 'go') return 'Cable and motor both proven good';
  if (verdict === 'undecided') return headlineFrom(assessment, words, '');
  const pe = {
    'proven-bad': 'PE core proven broken',
    suspect: 'PE suspect: it shows no continuity',
  };
  const protective = parts.protectiveConductor;
  const broken = protective === 'proven-bad' || protective === 'suspect' ? [pe[protective]] : [];
  const tested = [parts.cable, parts.motor].some((status) => status !== 'not-tested' && status !== 'not-suspect');
  const named = [parts.cable, parts.motor].some((status) => status === 'proven-bad' || status === 'suspect');
  const joined = findings.flatMap((one) =>
    !named && one.code === 'stage-bad' && one.stage === 'joined' ? [joinedReads(one.phases)] : [],
  );
  if (!tested) return capital([...broken, ...joined.map((text) => `${text}: cable or motor`)].join('; '));
  const rank = ['proven-bad', 'suspect', 'undecided', 'not-tested', 'not-suspect', 'proven-good'];
  const order = (['cable', 'motor'] as const).slice().sort((a, b) => rank.indexOf(parts[a]) - rank.indexOf(parts[b]));
  return capital([...broken, ...joined, ...order.map((name) => part(name, assessment))].join('; '));
}
