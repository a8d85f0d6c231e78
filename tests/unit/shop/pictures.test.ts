import { describe, expect, test } from 'vitest';
import { readShopText, writeState } from '../../../src/shop/file/shop-file.ts';
import { type Content, picturesOf, withPictures } from '../../../src/shop/merge/content.ts';
import { exchange } from '../../../src/shop/merge/exchange.ts';
import { type Known, mergeStates, type Shared, stateHere } from '../../../src/shop/merge/merge-visit.ts';
import { newVisit } from '../../../src/visit/record/change-visit.ts';
import { photograph } from '../../support/photographs.ts';

// Common practice of merging without a common clock, no source.

const record = newVisit('marrow-bay-1', '2026-03-03T06:00:00+01:00', { machine: 'Marrow Bay line 2 (invented)' });
const terminal = photograph('terminal-burnt');
const plug = photograph('plug-bent');
const captioned = (caption: string, changedAt: string) => ({ ...terminal, caption, changedAt });
const shown = ({ visit }: Shared) =>
  visit ? picturesOf(visit).map(({ id, caption }) => `${id} ${caption}`.trim()) : [];

/** What a device knows after an exchange in which everything was `content`. */
function knownOf(content: Content): Known {
  const here = {
    device: 'tablet-a',
    visits: new Map([[content.id, content]]),
    unreadable: new Set<string>(),
    known: new Map(),
  };
  const known = exchange(here, []).known.get(content.id);
  if (known === undefined) throw new Error('nothing is known');
  return known;
}

/** Both tablets have exchanged `before`; then each changes it without sight of the other. */
function apart(before: Content, onA: Content, onB: Content): Shared {
  const states = [
    stateHere('tablet-a', record.id, onA, knownOf(before)),
    stateHere('tablet-b', record.id, onB, knownOf(before)),
  ];
  const [a, b] = states;
  if (a === undefined || b === undefined) throw new Error('a state is missing');
  const merged = mergeStates([a, b]);
  expect(mergeStates([b, a])).toEqual(merged);
  expect(merged.second).toEqual([]);
  // Old states that a folder still holds change nothing.
  expect(shown(mergeStates([merged.state, a, b]).state)).toEqual(shown(merged.state));
  return merged.state;
}

describe('photographs that two tablets changed apart', () => {
  const both = withPictures(record, [terminal]);

  test('one that was taken off does not come back with another one that was attached', () => {
    const merged = apart(both, record, withPictures(record, [terminal, plug]));
    expect(shown(merged)).toEqual([plug.id]);
    expect(merged.pictures?.[terminal.id]).toEqual({ turns: 2, captions: {} });
  });

  test('the file of the visit carries that it was taken off', () => {
    const merged = apart(both, record, withPictures(record, [terminal, plug]));
    const read = readShopText(writeState(merged, '2026-03-03T08:00:00Z'));
    expect(read.ok && read.value.states[0]?.pictures).toEqual(merged.pictures);
  });

  test('one with a caption that was typed meanwhile stays', () => {
    const captionedOnB = withPictures(record, [captioned('Core W is black', '2026-03-03T07:00:00+01:00')]);
    expect(shown(apart(both, record, captionedOnB))).toEqual([`${terminal.id} Core W is black`]);
  });

  test('the caption that was typed with the other in sight holds, whatever the clocks say', () => {
    const first = withPictures(record, [captioned('Core V', '2026-03-03T15:00:00+01:00')]);
    const corrected = withPictures(record, [captioned('Core W', '2026-03-03T06:30:00+01:00')]);
    const attached = withPictures(record, [...picturesOf(first), plug]);
    expect(shown(apart(first, attached, corrected))).toEqual([plug.id, `${terminal.id} Core W`].sort());
  });

  test('of two captions that were typed without sight of each other both are kept, once', () => {
    const onA = withPictures(record, [captioned('Core V', '2026-03-03T15:00:00+01:00')]);
    const onB = withPictures(record, [captioned('Core W', '2026-03-03T06:30:00+01:00')]);
    expect(shown(apart(both, onA, onB))).toEqual([`${terminal.id} Core V / Core W`]);
  });

  test('one that was put back is there again', () => {
    const off = knownOf(both).pictures?.[terminal.id];
    expect(off).toMatchObject({ turns: 1 });
    const taken = apart(both, record, withPictures(record, [terminal, plug]));
    const known: Known = {
      ...{ versions: taken.versions, print: 'as it was without it' },
      pictures: Object.fromEntries(
        Object.entries(taken.pictures ?? {}).map(([id, count]) => [id, { ...count, caption: '' }]),
      ),
    };
    const again = stateHere('tablet-a', record.id, withPictures(record, [terminal, plug]), known);
    expect(again?.pictures?.[terminal.id]).toEqual({ turns: 3, captions: {} });
  });

  test('a visit that was deleted and comes back brings its photographs', () => {
    const deleted = stateHere('tablet-a', record.id, undefined, knownOf(both));
    const changed = stateHere('tablet-b', record.id, { ...both, notes: 'seen' }, knownOf(both));
    if (deleted === undefined || changed === undefined) throw new Error('a state is missing');
    expect(shown(mergeStates([deleted, changed]).state)).toEqual([terminal.id]);
  });
});
