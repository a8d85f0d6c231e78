import { idle, insulationIs, isolationIs } from '../support/answers.ts';
import { insulations, isolations } from '../support/readings.ts';
import { bothSeparatelyGood, bridgeGood, moving, windingGood } from '../support/ways.ts';
import type { Leaf } from './leaf.ts';

export const protectiveConductor: Leaf[] = [
  {
    what: 'is broken in the cable: everything else passes',
    visit: [
      ...moving(),
      bridgeGood,
      windingGood,
      idle(),
      insulationIs(insulations.peBroken),
      isolationIs(isolations.peBroken),
    ],
    decision: 'replace',
    replace: { 'protective-conductor': ['pe-broken'] },
    good: ['drive', 'motor', 'motor-cable'],
    why: 'The frame can become live: a fault of its own, and nothing is powered.',
  },
  {
    what: 'is broken in the motor',
    visit: [
      ...moving(),
      bridgeGood,
      windingGood,
      idle(),
      insulationIs(insulations.peBroken),
      isolationIs(isolations.motorPeBroken),
    ],
    decision: 'replace',
    replace: { motor: ['isolation-bad'], 'protective-conductor': ['pe-broken'] },
    good: ['drive', 'motor-cable'],
    why: 'The motor alone has no short between PE pin and shell.',
  },
  {
    what: 'read open in the insulation test and sound at the isolation',
    visit: [...moving(), bridgeGood, windingGood, idle(), insulationIs(insulations.peBroken), bothSeparatelyGood],
    decision: 'undecided',
    open: ['insulation-open'],
    why: 'The two contradict each other: the insulation test is repeated, nothing is replaced.',
  },
];
