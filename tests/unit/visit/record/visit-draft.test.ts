import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import {
  emptyDraft,
  isEmptyDraft,
  newerDraft,
  readDraft,
  unsavedPart,
  withEntry,
} from '../../../../src/visit/record/visit-draft.ts';
import { draftJournal } from '../../../../src/visit/storage/draft-journal.ts';
import { replayDraft } from '../../../support/visit-records.ts';
import { must } from './support/must.ts';
import { freshName, tab } from './support/store.ts';
import { at } from './support/typical-visit.ts';

const lift = newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' });
const lockout = { lockedOut: 'yes', waited: 'yes', meterProved: 'yes', busVoltage: '0.0' };

describe('a draft', () => {
  test('holds the newest text of each step and detail, each with the time at which it was typed', () => {
    const first = withEntry(emptyDraft, { step: 'lockout-1', form: { busVoltage: '0' } }, at(1));
    const second = withEntry(first, { step: 'lockout-1', form: lockout }, at(2));
    const third = withEntry(second, { details: { notes: 'Smel' } }, at(3));
    expect(third).toEqual({
      count: 3,
      steps: { 'lockout-1': { form: lockout, at: at(2) } },
      details: { values: { notes: 'Smel' }, at: at(3) },
    });
    expect(newerDraft(first, third)).toBe(third);
    expect(newerDraft(third, first)).toBe(third);
    expect(readDraft(JSON.parse(JSON.stringify(third)))).toEqual(third);
  });

  test('that is old is not newer because of many keystrokes, and does not replace the details of a later save', () => {
    const old = { ...withEntry(emptyDraft, { details: { notes: 'Sme' } }, at(1)), count: 90 };
    const fresh = withEntry(emptyDraft, { details: { notes: 'Smell of' } }, at(9));
    expect(newerDraft(old, fresh)).toBe(fresh);
    expect(newerDraft(fresh, old)).toBe(fresh);
    const saved = { ...lift, notes: 'Smell of burnt varnish', changedAt: at(5) };
    expect(replayDraft(saved, old).notes).toBe('Smell of burnt varnish');
    expect(replayDraft(saved, fresh).notes).toBe('Smell of');
  });

  test('loses what the visit has, and nothing else', () => {
    const draft = withEntry(
      withEntry(emptyDraft, { details: { axis: 'Lift', notes: 'Smell' } }, at(1)),
      { step: 'lockout-1', form: lockout },
      at(2),
    );
    expect(unsavedPart(draft, lift).details?.values).toEqual({ notes: 'Smell' });
    const visit = replayDraft(lift, draft);
    expect(visit).toMatchObject({ notes: 'Smell', steps: { 'lockout-1': { form: lockout } } });
    expect(isEmptyDraft(unsavedPart(draft, visit))).toBe(true);
  });

  test('that is replayed keeps its own time: a lockout typed yesterday does not count today', () => {
    const draft = withEntry(emptyDraft, { step: 'lockout-1', form: lockout }, at(2));
    expect(replayDraft(lift, draft).steps['lockout-1']).toMatchObject({ at: at(2), readAt: { busVoltage: at(2) } });
  });

  test('that is empty changes nothing', () => {
    expect(replayDraft(lift, emptyDraft)).toBe(lift);
  });

  test.each([null, 7, [], {}, { count: -1, steps: {} }, { count: 1, steps: { hack: { form: {}, at: at(1) } } }])(
    'that is damaged is an empty one: %j',
    (stored) => {
      expect(readDraft(stored)).toEqual(emptyDraft);
    },
  );
});

describe('the journal', () => {
  const held = new Map<string, string>();
  beforeEach(() => {
    held.clear();
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => held.get(key) ?? null,
      setItem: (key: string, value: string) => void held.set(key, value),
      removeItem: (key: string) => void held.delete(key),
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  const bridge = (plusU: string) => ({ step: 'bridge' as const, form: { plusU } });

  test('has each keystroke at once, in case the page is left before anything else can be written', async () => {
    const name = freshName();
    const journal = draftJournal(tab(name), lift.id);
    journal.enter(bridge('4'), at(1));
    journal.enter(bridge('45'), at(2));
    expect((await draftJournal(tab(name), lift.id).load()).steps.bridge?.form).toEqual({ plusU: '45' });
  });

  test('has it in the store as well, in case the browser is killed and loses its other storage', async () => {
    const name = freshName();
    const store = tab(name);
    must(await store.save(lift));
    const journal = draftJournal(store, lift.id);
    journal.enter(bridge('4'), at(1));
    journal.enter(bridge('45'), at(2));
    journal.enter(bridge('450'), at(3));
    await vi.waitFor(async () => expect((await store.loadDraft(lift.id)).steps.bridge?.form.plusU).toBe('450'));
    held.clear();
    expect((await draftJournal(tab(name), lift.id).load()).steps.bridge?.form).toEqual({ plusU: '450' });
  });

  test('a save of the visit keeps what is still being typed, and drops what was saved', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const journal = draftJournal(store, lift.id);
    journal.enter(bridge('450k'), at(1));
    await vi.waitFor(async () => expect(isEmptyDraft(await store.loadDraft(lift.id))).toBe(false));
    const noted = { ...saved, notes: 'Something else' };
    const again = must(await store.save(noted, journal.beside(noted)));
    expect((await store.loadDraft(lift.id)).steps.bridge?.form).toEqual({ plusU: '450k' });
    journal.saved(again);
    expect(held.size).toBe(1);
    journal.saved(replayDraft(again, await store.loadDraft(lift.id)));
    expect(held.size).toBe(0);
    await vi.waitFor(async () => expect(isEmptyDraft(await store.loadDraft(lift.id))).toBe(true));
  });

  test('a save replaces an older draft', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const journal = draftJournal(store, lift.id);
    journal.enter({ details: { notes: 'Sme' } }, at(1));
    await vi.waitFor(async () => expect(isEmptyDraft(await store.loadDraft(lift.id))).toBe(false));
    const whole = { ...saved, notes: 'Smell' };
    // The page is closed right after this save, before the journal can write.
    must(await store.save(whole, undefined));
    held.clear();
    expect(replayDraft(whole, await draftJournal(store, lift.id).load()).notes).toBe('Smell');
  });

  test('an answer saved later, perhaps in another tab, is kept despite a draft', () => {
    const draft = withEntry(emptyDraft, bridge('450k'), at(1));
    const later = replayDraft(lift, withEntry(emptyDraft, bridge('0.4 Ω'), at(3)));
    expect(replayDraft(later, draft).steps.bridge?.form).toEqual({ plusU: '0.4 Ω' });
  });

  test.each(['conflict', 'deleted', 'replaced'])(
    'what was typed here does not appear in another visit: %s',
    async (what) => {
      const store = tab(freshName());
      const saved = must(await store.save(lift));
      const journal = draftJournal(store, lift.id);
      journal.enter(bridge('450k'), at(1));
      await vi.waitFor(async () => expect(isEmptyDraft(await store.loadDraft(lift.id))).toBe(false));
      if (what === 'conflict') journal.forget();
      if (what === 'deleted') must(await store.remove(lift.id));
      if (what === 'replaced') must(await store.add(saved, 'replace'));
      await vi.waitFor(async () => expect(isEmptyDraft(await draftJournal(store, lift.id).load())).toBe(true));
    },
  );

  test('a browser that refuses all storage does no harm', async () => {
    vi.stubGlobal('localStorage', undefined);
    vi.stubGlobal('indexedDB', undefined);
    const journal = draftJournal(tab(freshName()), lift.id);
    journal.enter(bridge('450k'), at(1));
    expect(isEmptyDraft(await draftJournal(tab(freshName()), lift.id).load())).toBe(true);
  });
});
