import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { buildTargets } from '../../src/shipped/targets.ts';
import { siteFolder } from '../tools/paths.ts';
import { youngFeatures } from '../tools/script-features.ts';
import { sourceFeatures } from '../tools/source-features.ts';
import { youngStyles } from '../tools/style-features.ts';

// The built files against the browsers that package.json names, after MDN's browser-compat-data.

/** What our scripts use although a browser of the targets lacks it, and what happens there. */
const guarded: Record<string, string> = {
  'PerformanceNavigationTiming.type': 'no entry is found, and the page counts as newly opened',
  BroadcastChannel: 'tabs do not hear of each other; each save still meets the newer record',
  'BroadcastChannel.postMessage': 'only where there is a channel',
  'BroadcastChannel.close': 'only where there is a channel',
  'StorageManager.persist': 'asked only where it is there; the page says where the browser could not be asked',
  'StorageManager.persisted': 'asked only where it is there',
  'Navigator.share': 'the visit is saved as a file',
  'Navigator.canShare': 'the visit is saved as a file',
  'CanvasImageSmoothing.imageSmoothingQuality': 'a photograph is scaled down with less care',
  requestIdleCallback: 'a timer takes its place',
  'Window.requestIdleCallback': 'a timer takes its place',
  'Window.visualViewport': 'the height of the window takes its place',
  'VisualViewport.height': 'only where there is one',
  'Navigator.wakeLock': 'the screen goes dark, and the page says so',
  'WakeLock.request': 'the screen goes dark, and the page says so',
  'WakeLockSentinel.release': 'the screen goes dark, and the page says so',
  'WakeLockSentinel.released': 'the screen goes dark, and the page says so',
  'LockManager.request': 'two exchanges at once may each write; the next one settles it',
  'FileSystemFileHandle.getFile': 'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemHandle.name': 'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemHandle.kind': 'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemDirectoryHandle.values':
    'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemDirectoryHandle.getFileHandle':
    'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemFileHandle.createWritable':
    'offered only where a folder can be chosen; else files by hand, and the page says so',
  'FileSystemWritableFileStream.write':
    'offered only where a folder can be chosen; else files by hand, and the page says so',
  'WritableStream.close': 'offered only where a folder can be chosen; else files by hand, and the page says so',
};

/** What libraries in the built scripts name; types are unknown there, so some names are their own. */
const inLibraries: Record<string, string> = {
  Segmenter: 'the search asks first whether it is there',
  FinalizationRegistry: 'the search asks first whether it is there',
  captureStackTrace: 'asked for first',
  stackTraceLimit: 'changed only where it is a number',
  preloadResponse: 'awaited, and empty where there is none',
  caches: 'of the worker’s library itself',
  destroy: 'of the search library itself',
  dispose: 'of the state library itself',
  displayName: 'of the state library itself',
  fallback: 'of the search library itself',
  grow: 'of a table of WebAssembly, which is as old as that',
  handle: 'of the worker’s library itself',
  memory: 'of a program in WebAssembly, which is as old as that',
  newState: 'of the package that schedules reviews itself',
  subscribe: 'of the state library itself',
  suffix: 'of the worker’s library itself',
  try: 'of our table of minutes',
};

/** What the style sheets use, and what a browser without it shows. */
const styled: Record<string, string> = {
  ':is': 'the build writes :-webkit-any() and :-moz-any() beside it',
  ':is in :not': 'on paper, addresses do not follow links',
  ':has': 'the practice stays as narrow as text, a chosen answer has no frame, a printed report keeps the header',
  ':focus-visible': 'the browser draws its own ring',
  ':file-selector-button': 'the button keeps the look of the browser',
  ':details-content': 'what is folded away is not printed',
  'content-visibility': 'what is folded away is not printed',
  'accent-color': 'radio buttons keep the colour of the browser',
  'color-scheme': 'scroll bars and radio buttons stay light',
  'tab-size': 'a tab in the pasted rows is eight letters wide',
  'text-size-adjust': 'a phone on its side may enlarge text',
  'text-wrap': 'a heading breaks where its line is full',
  'overflow-wrap: anywhere': 'a long word may widen its box, which then scrolls',
  'scroll-behavior': 'the page jumps',
  'width: fit-content': 'the part is as wide as its column',
  contain: 'the panel is laid out with the page',
  page: 'the report prints with the usual margins',
  '@page': 'the sheet has the usual margins of the browser',
  orphans: 'a paragraph may leave one line behind on paper',
  widows: 'a paragraph may take one line along on paper',
  'break-after: avoid': 'a heading may be the last line on paper',
  'align-self: start': 'known in grid, which is all that is used; the data speak of other layouts',
  'align-self: end': 'known in grid, which is all that is used; the data speak of other layouts',
  'cursor: pointer': 'a touch screen shows none',
  '@media prefers-contrast': 'the usual colours',
  '@media forced-colors': 'colours as the system forces them',
  '@media scripting': 'no-script.css does the same, from <noscript>',
};

const guardedNames = new Set(Object.keys(guarded).map((feature) => feature.replace(/^\w+\./, '')));

const scripts = globSync('**/*.js', { cwd: siteFolder });
const kindOf = (file: string) => (/^sw\.js$|-worker(-[\w-]+)?\.js$/.test(file) ? 'worker' : 'module');
const read = (file: string) => readFileSync(join(siteFolder, file), 'utf8');

test('the build is told of the oldest browsers by package.json alone', () => {
  expect(buildTargets).toEqual(['chrome87', 'edge87', 'firefox78', 'ios14.5', 'safari14.1']);
});

describe('scripts', () => {
  const { young, ownNames } = sourceFeatures();

  test('use nothing of ours that the browsers lack, but what is guarded', () => {
    expect(young.filter(({ feature }) => !(feature in guarded))).toEqual([]);
    const used = new Set(young.map(({ feature }) => feature));
    expect(Object.keys(guarded).filter((feature) => !used.has(feature))).toEqual([]);
  });

  test('can be read, and the libraries in them use nothing else', () => {
    const found = scripts.flatMap((file) =>
      youngFeatures(read(file), kindOf(file))
        .map((name) => name.replace(/^\./, ''))
        .filter((name) => !ownNames.has(name) && !guardedNames.has(name) && !(name in inLibraries))
        .map((name) => `${file}: ${name}`),
    );
    expect(scripts.length).toBeGreaterThan(50);
    expect(found).toEqual([]);
  });
});

test('a script with what is too young is found', () => {
  expect(youngFeatures('[1].at(-1); structuredClone({}); /(?<=a)b/.test("ab")', 'module')).toEqual([
    '.at',
    'lookbehind',
    'structuredClone',
  ]);
  expect(youngFeatures("new Worker('w.js', { type: 'module' })", 'module')).toEqual(['worker as a module']);
  expect(youngFeatures("new Worker('w.js', options)", 'module')).toEqual(['worker as a module']);
  expect(youngFeatures("new Worker('w.js', { name: 'w' })", 'module')).toEqual([]);
  expect(youngFeatures("import('x.js')", 'worker')).toEqual(['import() in a worker']);
  expect(() => youngFeatures('class A { #a = 1 }', 'module')).toThrow();
  expect(() => youngFeatures('a ||= b', 'module')).toThrow();
});

describe('style sheets', () => {
  const found = globSync('**/*.css', { cwd: siteFolder }).flatMap((file) =>
    youngStyles(read(file)).map((young) => ({ file, ...young })),
  );

  test('use only what a browser may do without', () => {
    expect(
      found.filter(({ feature }) => !(feature in styled)).map(({ file, feature }) => `${file}: ${feature}`),
    ).toEqual([]);
  });

  test('lose nothing else with it', () => {
    expect(found.filter(({ feature, bystanders }) => feature !== ':is' && bystanders.length > 0)).toEqual([]);
  });
});

test('a style sheet with what is too young is found', () => {
  const features = (code: string) => youngStyles(code).map(({ feature }) => feature);
  expect(features('@media (width <= 34rem) { a { color: red } }')).toEqual(['@media range']);
  expect(features('a:where(.b) { aspect-ratio: 1; height: 10dvh }')).toEqual([':where', 'aspect-ratio', 'dvh']);
  expect(features('a { color: color-mix(in srgb, red, blue) }')).toEqual(['color-mix()']);
  expect(youngStyles('a:has(b), c { color: red }')).toEqual([{ feature: ':has', bystanders: ['c'] }]);
});
