import { openDB } from 'idb';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { newVisit } from '../../../../src/visit/record/change-visit.ts';
import { exportVisit } from '../../../../src/visit/record/export-visit.ts';
import { readVisitText } from '../../../../src/visit/record/read-visit.ts';
import { database } from '../../../../src/visit/storage/database.ts';
import { storageProblem } from '../../../../src/visit/storage/storage-problem.ts';
import { must } from '../record/support/must.ts';
import { freshName, tab } from '../record/support/store.ts';
import { at } from '../record/support/typical-visit.ts';

const lift = newVisit('visit-lift', at(0), { machine: 'Line 2', axis: 'Lift' });

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const refusing = (name: string) => ({
  open() {
    throw new DOMException('refused', name);
  },
});

describe('without storage the visit stays in the window and can be exported', () => {
  test.each([
    ['a browser without IndexedDB', undefined],
    ['storage switched off', refusing('SecurityError')],
    ['a private window', refusing('InvalidStateError')],
  ])('%s', async (_what, indexedDB) => {
    vi.stubGlobal('indexedDB', indexedDB);
    const store = tab(freshName());
    const result = await store.save(lift);
    expect(result).toMatchObject({ ok: false, problem: { kind: 'no-storage' }, mine: lift });
    expect(result.ok ? '' : result.problem.message).toContain('export it as a file');
    expect(readVisitText(exportVisit(lift).text)).toEqual({ ok: true, value: { visit: lift, photographs: [] } });
    for (const other of [store.list(), store.load(lift.id), store.remove(lift.id), store.add(lift)]) {
      expect(await other).toMatchObject({ ok: false, problem: { kind: 'no-storage' } });
    }
  });

  test('storage whose property throws when it is read', async () => {
    const original = Object.getOwnPropertyDescriptor(globalThis, 'indexedDB') as PropertyDescriptor;
    Object.defineProperty(globalThis, 'indexedDB', {
      configurable: true,
      get() {
        throw new DOMException('', 'SecurityError');
      },
    });
    try {
      expect(await tab(freshName()).save(lift)).toMatchObject({ ok: false, problem: { kind: 'no-storage' } });
    } finally {
      Object.defineProperty(globalThis, 'indexedDB', original);
    }
  });
});

describe('a full device', () => {
  const quota = () => new DOMException('no room', 'QuotaExceededError');

  test('the last change is refused, what was saved stays, and saving works again once there is room', async () => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw quota();
    });
    const mine = { ...saved, notes: 'a long day' };
    const result = await store.save(mine);
    expect(result).toMatchObject({ ok: false, problem: { kind: 'full' }, mine });
    expect(result.ok ? '' : result.problem.message).toContain('What was saved before is still there');
    put.mockRestore();
    expect(must(await store.load(lift.id))).toEqual(saved);
    expect(must(await store.save(mine)).revision).toBe(saved.revision + 1);
  });

  // As in browsers: the transaction is aborted, and only its error names the reason.
  test.each([
    ['while the request runs', (_request: IDBRequest, abort: () => void) => abort()],
    ['after it', (request: IDBRequest, abort: () => void) => request.addEventListener('success', abort)],
  ])('also where the browser finds out only when it writes to the disk, %s', async (_when, giveUp) => {
    const store = tab(freshName());
    const saved = must(await store.save(lift));
    const { put } = IDBObjectStore.prototype;
    const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value) {
      const request = put.call(this, value);
      const { transaction } = this;
      Object.defineProperty(transaction, 'error', { get: quota });
      giveUp(request, () => transaction.abort());
      return request;
    });
    expect(await store.save({ ...saved, notes: 'x' })).toMatchObject({ ok: false, problem: { kind: 'full' } });
    spy.mockRestore();
    expect(must(await store.load(lift.id))).toEqual(saved);
  });
});

describe('tabs of different editions', () => {
  test('an older tab has the database open: busy, and open once that tab has closed it', async () => {
    const name = freshName();
    const older = await openDB(name, 1, {
      upgrade(db) {
        db.createObjectStore('visits', { keyPath: 'id' }).createIndex('order', 'order');
      },
    });
    const store = tab(name);
    expect(await store.save(lift)).toMatchObject({ ok: false, problem: { kind: 'busy' }, mine: lift });
    older.close();
    await vi.waitFor(async () => expect((await store.save(lift)).ok).toBe(true));
    expect(must(await store.load(lift.id)).axis).toBe('Lift');
  });

  test('a tab of this edition closes the database by itself, and is then asked to reload', async () => {
    const name = freshName();
    const store = tab(name);
    const saved = must(await store.save(lift));
    const newer = await openDB(name, 3, { upgrade: () => undefined });
    expect(await store.save(saved)).toMatchObject({ ok: false, problem: { kind: 'newer-site' }, mine: saved });
    newer.close();
  });
});

describe('a connection that the browser closed', () => {
  test('is opened again without a message', async () => {
    const name = freshName();
    const db = database(name);
    const store = tab(name, { database: db });
    const saved = must(await store.save(lift));
    const { transaction } = IDBDatabase.prototype;
    let closed = 0;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...all) {
      if (closed++ === 0) throw new DOMException('closing', 'InvalidStateError');
      return transaction.apply(this, all);
    });
    expect(must(await store.save(saved)).revision).toBe(2);
  });
});

test('work that fails half-way leaves nothing behind', async () => {
  const name = freshName();
  const db = database(name);
  const half = db.run('readwrite', async (visits) => {
    await visits.put({ id: lift.id, order: 1, record: lift });
    throw new Error('half-way');
  });
  await expect(half).rejects.toThrow('half-way');
  expect(await db.run('readonly', (visits) => visits.getAll())).toEqual([]);
  db.close();
});

test.each([
  [new DOMException('', 'QuotaExceededError'), 'full'],
  [new DOMException('', 'NS_ERROR_DOM_QUOTA_REACHED'), 'full'],
  [new DOMException('', 'VersionError'), 'newer-site'],
  [new DOMException('', 'UnknownError'), 'failed'],
  [new DOMException('', 'AbortError'), 'failed'],
  [new TypeError('odd'), 'failed'],
  [Object.assign(new Error(''), { name: 'toString' }), 'failed'],
  ['a string', 'failed'],
  [undefined, 'failed'],
])('%s is %s', (error, kind) => {
  expect(storageProblem(error).kind).toBe(kind);
});
