import { describe, expect, it } from 'vitest';
import type { Part } from '../../../../src/kernel/vocabulary.ts';
import { everyCause } from '../../../../src/visit/guide/causes.ts';
import { decide } from '../../../../src/visit/guide/decision.ts';
import {
  bridgeIs,
  done,
  idle,
  insulationIs,
  isolationIs,
  mechanics,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

const good: Given[] = [
  ...[trips('on-enable'), seen(), done('disconnect-leads'), bridgeIs(bridges.good), windingIs(windings.alike)],
  ...[idle(), insulationIs(insulations.good)],
];
const tried = (result: 'trips' | 'no-trip' | 'other-message' | 'not-done'): Given[] => [
  done('reconnect'),
  retry('retry-all', result),
];
const decided = (way: Given[], record = way) => decide(visitOf(way), visitOf(record));
const excluded = (way: Given[], record = way) => decided(way, record).excluded.map(({ part }) => part);

describe('the kind', () => {
  it.each<[what: string, way: Given[], kind: string, open: string[]]>([
    ['no trip after everything passed', [...good, ...tried('no-trip')], 'no-fault-found', []],
    [
      'a trip after everything passed',
      [...good, isolationIs(isolations.bothGood), ...tried('trips')],
      'inconclusive',
      [],
    ],
    ['another message', [...good, ...tried('other-message')], 'undecided', ['another-message']],
    ['not tried', [...good, ...tried('not-done')], 'undecided', ['retry-not-done']],
    ['a stiff axis', [...good, mechanics('stiff')], 'mechanical', ['mechanics']],
    ['an axis that is held', [...good, mechanics('held')], 'undecided', ['axis-held']],
    [
      'a stiff axis, and idle cores not measured',
      [...good, mechanics('stiff'), idle('not-done')],
      'undecided',
      ['idle-cores-open', 'mechanics'],
    ],
    [
      'a suspect part, and a stiff axis',
      [...good, mechanics('stiff'), isolationIs(isolations.motorSuspect)],
      'undecided',
      ['mechanics'],
    ],
    [
      'a part proven bad, and a stiff axis',
      [...good, mechanics('stiff'), bridgeIs(bridges.shorted)],
      'replace',
      ['mechanics'],
    ],
  ])('%s: %s', (_, way, kind, open) => {
    const found = decided(way);
    expect([found.kind, found.open]).toEqual([kind, open]);
  });
});

describe('what is possible', () => {
  it('is nothing beside a part proven bad, and every cause that no reading excludes otherwise', () => {
    expect(decided([...good, bridgeIs(bridges.shorted)]).possible).toEqual([]);
    const open = decided([...good, bridgeIs(bridges.shortedOnce)]).possible;
    // No idle cores, and a sound PE.
    expect([...open].sort()).toEqual(
      everyCause.filter((one) => one !== 'idle-core' && one !== 'protective-conductor').sort(),
    );
  });
});

describe('a part that passed', () => {
  const all: Part[] = ['drive', 'motor', 'motor-cable'];

  it('is good only once the trip is explained, or stays away', () => {
    expect(decided(good).good).toEqual([]);
    expect(decided([...good, ...tried('no-trip')]).good).toEqual(all);
    expect(decided([...good, isolationIs(isolations.bothGood), ...tried('trips')]).good).toEqual([]);
    expect(decided([...good, bridgeIs(bridges.shorted)]).good).toEqual(['motor', 'motor-cable']);
    expect(decided([...good, mechanics('stiff')]).good).toEqual(all);
  });

  it('only as it trips: a cold motor of a trip when hot is not', () => {
    const hot = [...good, trips('when-hot'), bridgeIs(bridges.shorted)];
    expect(decided(hot).good).toEqual(['motor-cable']);
    expect(decided([...hot, insulationIs(insulations.good, undefined, 90)]).good).toEqual(['motor', 'motor-cable']);
  });

  it('is neither good nor excluded if it is suspect, or proven bad before a correction', () => {
    const burnt = [...good, bridgeIs(bridges.shorted), isolationIs(isolations.motorSuspect)];
    expect(decided(burnt).good).toEqual(['motor-cable']);
    expect(excluded(burnt)).toEqual(['motor-cable', 'protective-conductor']);
    const convicted = [...good, bridgeIs(bridges.shorted)];
    const record = [...convicted, isolationIs(isolations.cableBad)];
    expect(decided(convicted, record).good).toEqual(['motor']);
    expect(excluded(convicted, record)).toEqual(['motor', 'protective-conductor']);
  });
});

describe('parts excluded without being good', () => {
  it('are those that were off while it tripped', () => {
    const way = [
      ...good,
      retry('retry-leads-off', 'trips'),
      strip(),
      retry('retry-stripped', 'trips', { stage: 'at-enable' }),
    ];
    expect(decided(way).replace.map(({ part }) => part)).toEqual(['drive']);
    expect(excluded(way)).toEqual(['motor', 'motor-cable', 'protective-conductor']);
  });
});
