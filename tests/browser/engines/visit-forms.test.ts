import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { eachEngine } from './each-engine.ts';
import type { Tab } from './tab.ts';

const half: { id: string; steps: Record<string, { form: Record<string, string> }> } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../visits/half-done.json'), 'utf8'),
);

/** Chooses the file on the page of visits, as from a file of this device. Runs in the page. */
function choose(text: string): void {
  const input = document.querySelector<HTMLInputElement>('#import-file');
  const files = new DataTransfer();
  files.items.add(new File([text], 'visit.json', { type: 'application/json' }));
  if (input === null) throw new Error('no field');
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

/** Every control of the steps that are open, by step and field. Runs in the page. */
function shown(): Record<string, string> {
  const found: Record<string, string> = {};
  for (const input of document.querySelectorAll<HTMLInputElement>('.visit-step input, .visit-step textarea')) {
    const step = input.closest('.visit-step')?.querySelector('[id^="step-"]')?.id ?? '';
    const key = `${step} ${input.name || input.id}`;
    if (input.type === 'radio') found[key] = input.checked ? input.value : (found[key] ?? '');
    else found[key] = input.type === 'checkbox' ? String(input.checked) : input.value;
  }
  return found;
}

/** The forms of the stored visit, which are what the guide judges. Runs in the page. */
async function stored(): Promise<Record<string, Record<string, string>>> {
  const db = await new Promise<IDBDatabase>((done, fail) => {
    const opening = indexedDB.open('overcurrent-fieldbook');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => fail(opening.error);
  });
  const all = await new Promise<{ record: { steps: Record<string, { form: Record<string, string> }> } }[]>((done) => {
    const asking = db.transaction('visits').objectStore('visits').getAll();
    asking.onsuccess = () => done(asking.result);
  });
  db.close();
  return Object.fromEntries(Object.entries(all[0]?.record.steps ?? {}).map(([id, { form }]) => [id, form]));
}

/** Opens the step of the moment, which takes a choice, and waits for its controls. */
async function openStep(tab: Tab): Promise<void> {
  await tab.see('.visit-steps');
  await tab.evaluate(() => {
    const step = document.querySelector('#step-symptom')?.closest('.visit-step');
    if (step?.querySelector('input') === null) step.querySelector<HTMLElement>('button, summary')?.click();
  });
  await tab.see('.visit-step input[value="when-hot"]');
}

eachEngine((engine) => {
  test('a visit shows what it judges after a reload, after going back and forward', async () => {
    const tab = await engine.open('/visit/');
    await tab.see('#import-file');
    await tab.evaluate(choose, JSON.stringify(half));
    await openStep(tab);
    await tab.evaluate(() => document.querySelector<HTMLInputElement>('.visit-step input[value="when-hot"]')?.click());
    await tab.waitFor(() => document.querySelector('.save-status')?.textContent?.startsWith('Saved'));
    const before = await tab.evaluate(shown);
    expect(Object.values(before)).toContain('when-hot');

    const expectSame = async () => {
      await openStep(tab);
      await expect.poll(() => tab.evaluate(shown)).toEqual(before);
      expect((await tab.evaluate(stored)).symptom).toMatchObject({ when: 'when-hot' });
      tab.problems.length = 0;
    };
    await tab.reload();
    await expectSame();
    await tab.go('/tables/');
    await tab.back();
    await expectSame();
    await tab.forward();
    await tab.back();
    await expectSame();
  });
});
