import { afterEach, expect, onTestFinished, test, vi } from 'vitest';
import { type VisitChange, visitChanges } from '../../../../src/visit/storage/changes.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

function channel(name: string) {
  const changes = visitChanges(name);
  onTestFinished(() => changes.close());
  return changes;
}

test('what one tab tells the others hear, until they stop listening', async () => {
  const [teller, listener, witness] = [channel('a'), channel('a'), channel('a')];
  const heard: VisitChange[] = [];
  const stop = listener.listen((change) => heard.push(change));
  teller.tell({ id: 'visit-0001', change: 'saved' });
  await vi.waitFor(() => expect(heard).toEqual([{ id: 'visit-0001', change: 'saved' }]));
  stop();
  const last = new Promise((resolve) => witness.listen(resolve));
  teller.tell({ id: 'visit-0002', change: 'removed' });
  expect(await last).toEqual({ id: 'visit-0002', change: 'removed' });
  expect(heard).toHaveLength(1);
});

test('words that are none of ours are passed over', async () => {
  const listener = channel('b');
  const stranger = new BroadcastChannel('b');
  onTestFinished(() => stranger.close());
  const heard = new Promise((resolve) => listener.listen(resolve));
  for (const word of ['hello', null, { id: 7, change: 'saved' }, { id: 'x', change: 'eaten' }, []]) {
    stranger.postMessage(word);
  }
  stranger.postMessage({ id: 'visit-0003', change: 'saved' });
  expect(await heard).toEqual({ id: 'visit-0003', change: 'saved' });
});

test('a browser without the channel hears nothing and does not fail', () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const changes = visitChanges('c');
  const stop = changes.listen(() => {
    throw new Error('heard something');
  });
  changes.tell({ id: 'visit-0001', change: 'saved' });
  stop();
  expect(changes.close()).toBeUndefined();
});
