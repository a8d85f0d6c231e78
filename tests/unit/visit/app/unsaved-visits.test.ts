import { afterEach, expect, test, vi } from 'vitest';
import { holdUnsaved, releaseUnsaved, warnBeforeLoss } from '../../../../src/visit/app/unsaved-visits.ts';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';

afterEach(() => vi.unstubAllGlobals());

test('a window with an unsaved visit asks before it closes, also in a Chromium that reads only returnValue', () => {
  const listeners: ((event: BeforeUnloadEvent) => void)[] = [];
  vi.stubGlobal('addEventListener', (_: string, listener: (event: BeforeUnloadEvent) => void) =>
    listeners.push(listener),
  );
  warnBeforeLoss();
  const close = () => {
    const event = { returnValue: '' as unknown, preventDefault: vi.fn() };
    for (const listener of listeners) listener(event as unknown as BeforeUnloadEvent);
    return { asks: Boolean(event.returnValue), prevented: event.preventDefault.mock.calls.length > 0 };
  };
  expect(close()).toEqual({ asks: false, prevented: false });
  const visit = newVisit('visit-lift', '2026-03-02T08:00:00+01:00');
  holdUnsaved(visit);
  expect(close()).toEqual({ asks: true, prevented: true });
  releaseUnsaved(visit.id);
  expect(close()).toEqual({ asks: false, prevented: false });
});
