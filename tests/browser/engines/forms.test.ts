import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { calculatorNames } from '../../../src/calculators/registry.ts';
import { root } from '../../tools/paths.ts';
import { eachEngine } from './each-engine.ts';
import type { Tab } from './tab.ts';

interface WorkedCase {
  title: string;
  expected: Record<string, string>;
}

const cases: WorkedCase[] = globSync('content/cases/*.json', { cwd: root }).map((file) =>
  JSON.parse(readFileSync(join(root, file), 'utf8')),
);

/** The verdict that was worked out by hand for the case that the button names. */
function expectedBy(button: string, calculator: string): string {
  const title = /\((.+), invented\)/.exec(button)?.[1];
  const verdict = cases.find((one) => one.title === title)?.expected[calculator];
  if (verdict === undefined) throw new Error(`${calculator}: no case for ${button}`);
  return verdict;
}

/** What every control of a form shows, by the id of its field, and the verdict beside it. Runs in the page. */
function shownIn(place: string) {
  const form = document.querySelector(place);
  const controls: Record<string, string> = {};
  for (const input of form?.querySelectorAll<HTMLInputElement>('[name]') ?? []) {
    if (input.type !== 'radio') controls[input.name] = input.value;
    else if (input.checked) controls[input.name] = input.value;
    else controls[input.name] ??= '';
  }
  const echoes = [...(form?.querySelectorAll('.echo') ?? [])].map((line) => line.textContent);
  // Drawings, and their tables, come a moment later than the words.
  const verdict = form?.querySelector('.verdict')?.cloneNode(true) as Element | undefined;
  for (const drawn of verdict?.querySelectorAll('figure, details.more') ?? []) drawn.remove();
  return { controls, echoes, verdict: verdict?.textContent ?? '' };
}

/** What the calculator judges, as this tab keeps it. Runs in the page. */
function judgedIn(name: string): Record<string, string> {
  const { keptAt: _, ...typed } = JSON.parse(sessionStorage.getItem(`fieldbook-typed-${name}`) ?? '{}');
  return typed;
}

/** The last answer of every question, so that none is left as the page came with it. Runs in the page. */
function lastAnswers(place: string): void {
  for (const group of document.querySelectorAll(`${place} fieldset`)) {
    const answers = group.querySelectorAll<HTMLInputElement>(':scope > .choices input[type="radio"]');
    answers[answers.length - 1]?.click();
  }
}

type Shown = ReturnType<typeof shownIn>;

async function settled(tab: Tab, place: string): Promise<Shown> {
  await tab.waitFor((where) => {
    const verdict = document.querySelector(`${where} .verdict`);
    const word = verdict?.querySelector('.verdict-word')?.textContent;
    return (
      verdict !== null && word !== 'Reading your entries' && !verdict.textContent?.includes('Reading your entries')
    );
  }, place);
  return tab.evaluate(shownIn, place);
}

/** What is shown otherwise than before, in lines that a failure prints whole. */
function differences(before: Shown, now: Shown): string[] {
  const lines = ({ controls, echoes, verdict }: Shown) => [
    ...Object.entries(controls).map(([id, value]) => `${id}: ${value}`),
    ...echoes.map((echo, index) => `echo ${index}: ${echo}`),
    `verdict: ${verdict}`,
  ];
  const [was, is] = [lines(before), lines(now)];
  return [
    ...was.filter((line) => !is.includes(line)).map((line) => `was ${line}`),
    ...is.filter((line) => !was.includes(line)).map((line) => `is ${line}`),
  ];
}

/** Every control shows what is judged, whatever way the page came. */
async function expectShownIsJudged(tab: Tab, name: string, before: Shown) {
  const place = `[data-island="${name}"]`;
  await tab.see(`${place}[data-live]`);
  await tab.waitFor(
    (place) => !document.querySelector(`${place} .verdict`)?.textContent?.includes('No verdict'),
    place,
  );
  // A page from the browser's cache is drawn again in the first moments after it is shown.
  await expect.poll(async () => differences(before, await settled(tab, place))).toEqual([]);
  const now = await settled(tab, place);
  const judged = await tab.evaluate(judgedIn, name);
  for (const [id, value] of Object.entries(now.controls))
    if (id in judged) expect(`${id} ${value}`).toBe(`${id} ${judged[id]}`);
}

eachEngine((engine) => {
  test.each(calculatorNames)('%s shows what it judges after a reload, back and forward', async (name) => {
    const place = `[data-island="${name}"]`;
    const tab = await engine.openAgain(`/calculators/${name}/`);
    await tab.see(`${place}[data-live]`);
    const worked = { within: place, button: 'Fill in the worked visit' };
    const expected = expectedBy(await tab.text(worked), name);
    await tab.click(worked);
    await tab.see(`${place} .verdict[data-verdict="${expected}"]`);
    expect(await tab.text(`${place} .findings`)).not.toBe('');
    await tab.evaluate(lastAnswers, place);
    await tab.waitFor(
      (where) => !document.querySelector(`${where} .verdict`)?.textContent?.includes('No verdict'),
      place,
    );
    const before = await settled(tab, place);
    expect(before.verdict).not.toContain('No verdict');
    expect(Object.values(before.controls).filter((value) => value !== '').length).toBeGreaterThan(2);

    await tab.reload();
    await expectShownIsJudged(tab, name, before);
    await tab.go('/tables/');
    await tab.back();
    await expectShownIsJudged(tab, name, before);
    await tab.forward();
    await tab.back();
    await expectShownIsJudged(tab, name, before);

    // One more answer is judged with the entries that can be seen, and with no others.
    await tab.click({ button: 'Clear the form' });
    await tab.reload();
    await tab.see(`${place}[data-live]`);
    const cleared = await tab.evaluate(shownIn, place);
    expect(cleared.verdict).toContain('No verdict');
    expect(await tab.evaluate(judgedIn, name)).toEqual({});
  });
});
