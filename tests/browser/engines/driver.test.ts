import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { eachEngine } from './each-engine.ts';

// The other tests of this folder rest on these: that the drivers drive, and do it in the same way. What those tests
// would notice themselves is not here: answers by their question, a killed browser on its profile.

let own: { site: string; close: () => void };

/** Two small pages that note what happens to them. */
const page = (path = '') => `<!doctype html><title>${path}</title><h1>${path}</h1>
  <label for="field">Reading of U</label><input id="field">
  <label><select id="list"><option>a<option>b</select> List</label>
  <a href="second">On</a>
  <script>
    const log = [];
    addEventListener('pageshow', (event) => log.push('persisted ' + event.persisted));
    for (const kind of ['input', 'change', 'click']) addEventListener(kind, (event) => log.push(kind + ' ' + event.isTrusted));
    addEventListener('keydown', (event) => log.push('key ' + event.key));
    const misbehave = () => {
      console.error('logged');
      fetch('missing');
      setTimeout(() => { throw new Error('thrown'); });
    };
  </script>`;

beforeAll(async () => {
  const server = createServer((request, response) => {
    const found = request.url !== '/missing';
    response.writeHead(found ? 200 : 404, { 'Content-Type': 'text/html; charset=utf-8' });
    response.end(page(request.url));
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  own = { site: `http://localhost:${(server.address() as AddressInfo).port}/`, close: () => server.close() };
});
afterAll(() => own.close());

declare const log: string[];
declare const misbehave: () => void;

eachEngine((engine) => {
  test('types by keys and replaces what stood there', async () => {
    const tab = await engine.openAgain('/first', own);
    await tab.fill('#field', '12');
    await tab.fill({ label: 'Reading of U' }, '4,5 MΩ >−x');
    expect(await tab.valueOf('#field')).toBe('4,5 MΩ >−x');
    expect(await tab.evaluate(() => log)).toEqual(
      expect.arrayContaining(['click true', 'key 1', 'key 4', 'input true']),
    );
    await tab.press('Control+a');
    await tab.press('Delete');
    expect(await tab.valueOf('#field')).toBe('');
    await tab.press('Tab');
    expect(await tab.evaluate(() => document.activeElement?.id)).toBe('list');
    await tab.choose('#list', 'b');
    expect(await tab.valueOf({ label: 'List' })).toBe('b');
  });

  test('goes back and forward, to pages that the browser kept, and reload makes a new page', async () => {
    const tab = await engine.openAgain('/first', own);
    await tab.fill('#field', 'kept');
    await tab.click({ link: 'On' });
    await tab.waitFor(() => document.title === '/second');
    await tab.back();
    expect(await tab.text('h1')).toBe('/first');
    expect(await tab.valueOf('#field')).toBe('kept');
    if (engine.keepsPages) await tab.waitFor(() => log.includes('persisted true'));
    await tab.forward();
    expect(await tab.text('h1')).toBe('/second');
    await tab.reload();
    expect(await tab.evaluate(() => log)).not.toContain('persisted true');
  });

  test('waits for promises and passes on what is thrown', async () => {
    const tab = await engine.openAgain('/first', own);
    expect(await tab.evaluate(async (a, b) => (await Promise.resolve(a)) + b.c, 1, { c: 2 })).toBe(3);
    await expect(tab.evaluate(() => Promise.reject(new Error('for a reason')))).rejects.toThrow('for a reason');
  });

  test('has the size that is asked for', async () => {
    const tab = await engine.openAgain('/first', { ...own, width: 820, height: 700 });
    expect(await tab.evaluate(() => [innerWidth, innerHeight])).toEqual([820, 700]);
  });

  test('tells what the page logs as an error, what it throws and what it misses', async () => {
    const tab = await engine.openAgain('/first', own);
    await tab.evaluate(() => misbehave());
    const told = engine.name === 'WebKitGTK' ? ['logged', 'thrown'] : ['logged', 'thrown', 'status 404'];
    for (const one of told) await expect.poll(() => tab.problemsSoFar()).toContainEqual(expect.stringContaining(one));
    tab.problems.length = 0;
  });

  test('tabs of a device share its storage, also after the last was closed, and no other device sees it', async () => {
    const device = await engine.device(own);
    const first = await device.open('/first');
    await first.evaluate(() => localStorage.setItem('note', 'mine'));
    const second = await device.open('/second');
    expect(await second.evaluate(() => localStorage.getItem('note'))).toBe('mine');
    await second.close();
    expect(await first.text('h1')).toBe('/first');
    await first.close();
    const third = await device.open('/first');
    expect(await third.evaluate(() => localStorage.getItem('note'))).toBe('mine');
    const other = await engine.open('/first', own);
    expect(await other.evaluate(() => localStorage.getItem('note'))).toBeNull();
  });
});
