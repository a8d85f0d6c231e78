import { oneOf, type Random, seeded } from '../../src/kernel/random.ts';
import {
  acts,
  adverbs,
  aspects,
  causes,
  headings,
  quantities,
  sentences,
  subjects,
  things,
  verbs,
} from './invented-words.ts';

const sections = ['trip', 'safety', 'measuring', 'deciding'];

/** Section and file name of the invented article with this number, from 1. */
export function inventedId(number: number): string {
  return `${sections[number % sections.length]}/invented-${String(number).padStart(4, '0')}`;
}

/**
 * An invented article in this site's own form: about 800 words, hazards, steps, a caution, limits with links, a figure
 * and a table. The same number gives the same text.
 */
export function inventedArticle(number: number): string {
  const random = seeded(1000 + number);
  const sentence = () => inventedSentence(random);
  const paragraph = (length: number) => Array.from({ length }, sentence).join(' ');
  const title = `${subjects[number % subjects.length]}: ${aspects[Math.floor(number / 12) % aspects.length]} ${number}`;
  const parts: Record<number, string[]> = {
    0: ['Above <Limit id="touch-voltage" /> nothing is touched, and a short is <Limit id="bridge-short" /> or less.'],
    1: [`<Figure caption="${sentence()}">\n${curve(random, number)}\n</Figure>`],
    2: [Array.from({ length: 5 }, (_, step) => `${step + 1}. ${sentence()}`).join('\n')],
    3: [table(random), `<Caution>\n  ${sentence()}\n</Caution>`],
  };
  const body = headings.map((heading, part) =>
    [`## ${heading}`, paragraph(3), paragraph(3), paragraph(2), ...(parts[part] ?? [])].join('\n\n'),
  );
  const matter = {
    title,
    summary: `${sentence()} ${sentence()}`.slice(0, 390),
    audience: 'Nobody: this article is invented, to see how the site grows.',
    section: sections[number % sections.length],
    order: 100 + number,
    hazards: ['lethal-voltage', 'stored-energy'],
    preconditions: [sentence(), sentence()],
    cannotTell: [sentence(), sentence()],
    sources: ['iec-61557-2'],
    related: [inventedId(Math.max(1, number - 4)), inventedId(Math.max(1, number - 1))],
  };
  return `---\n${JSON.stringify(matter, null, 1)}\n---\n\n${paragraph(3)}\n\n${body.join('\n\n')}\n`;
}

function inventedSentence(random: Random): string {
  const fill: Record<string, string[]> = {
    quantity: quantities,
    verb: verbs,
    adverb: adverbs,
    cause: causes,
    thing: things,
    other: things,
    act: acts,
  };
  const text = oneOf(random, sentences).replaceAll(/\{(\w+)\}/g, (_, kind) => oneOf(random, fill[kind] ?? ['']));
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function table(random: Random): string {
  const rows = Array.from(
    { length: 8 },
    (_, row) => `| ${row + 1} | ${oneOf(random, verbs)} | ${oneOf(random, causes)} |`,
  );
  return ['| step | what it does | likely cause |', '| --- | --- | --- |', ...rows].join('\n');
}

function curve(random: Random, number: number): string {
  const pace = 4 + random() * 6;
  const points = Array.from(
    { length: 40 },
    (_, x) => `${40 + x * 8},${Math.round(220 - 180 * (1 - Math.exp(-x / pace)))}`,
  );
  const names = `curve-${number}-title curve-${number}-desc`;
  return (
    `<svg class="drawing" viewBox="0 0 360 260" role="img" aria-labelledby="${names}">` +
    `<title id="curve-${number}-title">A reading that settles</title>` +
    `<desc id="curve-${number}-desc">The curve rises steeply, then ever less.</desc>` +
    `<path class="line" d="M40 20V230H350" /><polyline class="line" points="${points.join(' ')}" />` +
    `<text x="40" y="252">time</text></svg>`
  );
}
