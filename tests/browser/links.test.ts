import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { siteBase, siteFolder } from '../tools/paths.ts';
import { builtPages } from './support/built-pages.ts';

const pages = builtPages();
const site = inject('site');
const idsOf = new Map(
  pages.map((path) => [new URL(path.slice(1), site).href, new Set(attributes(htmlOf(path), 'id'))]),
);

function htmlOf(path: string): string {
  return readFileSync(join(siteFolder, path.endsWith('/') ? `${path}index.html` : path), 'utf8');
}

/** Values of an attribute, with the five characters that HTML escapes put back. */
function attributes(html: string, name: string): string[] {
  const entities: Record<string, string> = { amp: '&', '#38': '&', quot: '"', '#39': "'", lt: '<', gt: '>' };
  const values = [...html.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map((match) => match[1] ?? '');
  return values.map((value) => value.replaceAll(/&(#?\w+);/g, (whole, entity) => entities[entity] ?? whole));
}

/** The names of the classes that each sheet of the built site styles, by its path within the site. */
const styledBy = new Map(
  globSync('_astro/*.css', { cwd: siteFolder }).map((file) => {
    const sheet = readFileSync(join(siteFolder, file), 'utf8');
    return [file.replaceAll('\\', '/'), [...sheet.matchAll(/\.([a-z][\w-]*)/g)].map(([, name = '']) => name)];
  }),
);
const styled = new Set([...styledBy.values()].flat());
/** The panel gets its sheet with the first search; a reading has a look of its own only on an instrument of the practice. */
const laterOrElsewhere = new Set(['search-panel', 'reading']);

/** What is wrong on each page, by its path; a page without a fault is left out. */
function faults(of: (path: string) => string[]): Record<string, string[]> {
  const found = pages.map((path) => [path, of(path)] as const);
  return Object.fromEntries(found.filter(([, list]) => list.length > 0));
}

test('each link leads to a page and a heading that exist', () => {
  let followed = 0;
  const broken = faults((path) => {
    const own = new URL(path.slice(1), site);
    const targets = attributes(htmlOf(path), 'href').map((href) => new URL(href, own));
    const inside = targets.filter((target) => target.host === own.host && !/\.\w+$/.test(target.pathname));
    followed += inside.length;
    return inside
      .filter((target) => {
        const ids = idsOf.get(`${target.origin}${target.pathname}`);
        // A fragment with an equals sign carries readings to a form, a code opens a practice case: neither names a heading.
        const id = /=|^#[0-9A-Z]{3}(-[0-9A-Z]{3}){2}$/.test(target.hash)
          ? ''
          : decodeURIComponent(target.hash.slice(1));
        return ids === undefined || (id !== '' && !ids.has(id));
      })
      .map((target) => target.pathname + target.hash);
  });
  expect(broken).toEqual({});
  expect(followed).toBeGreaterThan(50 * pages.length);
});

test('what has a style on a page brings its sheet along', () => {
  const bare = faults((path) => {
    const html = htmlOf(path);
    const own = new Set(attributes(html, 'href').flatMap((href) => styledBy.get(href.slice(siteBase.length)) ?? []));
    const classes = new Set(attributes(html, 'class').flatMap((names) => names.split(' ')));
    return [...classes].filter((name) => styled.has(name) && !own.has(name) && !laterOrElsewhere.has(name));
  });
  expect(bare).toEqual({});
  expect(styled.size).toBeGreaterThan(100);
});

test('each id stands once on its page', () => {
  const twice = faults((path) => {
    const ids = attributes(htmlOf(path), 'id');
    return ids.filter((id, i) => ids.indexOf(id) !== i);
  });
  expect(twice).toEqual({});
});
