import { afterEach, expect, onTestFinished, test, vi } from 'vitest';
import { tabChannel, type VisitChange } from '../../../../src/visit/storage/tab-channel.ts';

afterEach(() => {
  vi.unstubAllGlobals();
});

function channel(name: string) {
  const channel = tabChannel(name);
  onTestFinished(() => channel.close());
  return channel;
}

test('other tabs receive what one tab announces, until they stop listening', async () => {
  const [sender, listener, witness] = [channel('a'), channel('a'), channel('a')];
  const heard: VisitChange[] = [];
  const stop = listener.listen((change) => heard.push(change));
  sender.announce({ id: 'visit-0001', change: 'saved' });
  await vi.waitFor(() => expect(heard).toEqual([{ id: 'visit-0001', change: 'saved' }]));
  stop();
  const last = new Promise((resolve) => witness.listen(resolve));
  sender.announce({ id: 'visit-0002', change: 'removed' });
  expect(await last).toEqual({ id: 'visit-0002', change: 'removed' });
  expect(heard).toHaveLength(1);
});

test('foreign messages are ignored', async () => {
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

test('without BroadcastChannel nothing is received and nothing fails', () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const channel = tabChannel('c');
  const stop = channel.listen(() => {
    throw new Error('heard something');
  });
  channel.announce({ id: 'visit-0001', change: 'saved' });
  stop();
  expect(channel.close()).toBeUndefined();
});
