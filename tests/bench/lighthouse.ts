import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { findBrowser } from '../tools/browser.ts';
import { root } from '../tools/paths.ts';

/** Not among the site's packages, because npm may install with a Node that is too old for it. */
const version = '13.5.0';
const categories = ['performance', 'accessibility', 'best-practices', 'seo'] as const;

export interface LighthouseReport {
  scores: Record<(typeof categories)[number], number>;
  /** Audits that cost points, by id. */
  failed: string[];
}

/** Folder with Lighthouse in it: LIGHTHOUSE_DIR, else our own in the temporary folder, installed at first use. */
function folder(): string {
  const own = process.env.LIGHTHOUSE_DIR ?? join(tmpdir(), 'fieldbook-lighthouse');
  if (!existsSync(join(own, 'node_modules/lighthouse'))) {
    mkdirSync(own, { recursive: true });
    const install = ['install', '--prefix', own, '--no-save', '--no-audit', '--no-fund', '--loglevel=error'];
    execFileSync('npm', [...install, `lighthouse@${version}`], { stdio: 'inherit' });
  }
  return own;
}

/** Scores, 0 to 100, of a page as on a mid-range phone with a slow connection. */
export async function lighthouse(address: string): Promise<LighthouseReport> {
  const report = join(mkdtempSync(join(tmpdir(), 'fieldbook-report-')), 'report.json');
  const args = [
    join(folder(), 'node_modules/lighthouse/cli/index.js'),
    address,
    '--quiet',
    '--output=json',
    // To a file: through a pipe a long report is cut off when the process ends.
    `--output-path=${report}`,
    `--only-categories=${categories.join()}`,
    '--chrome-flags=--headless=new --no-sandbox --disable-background-networking --disable-component-update',
  ];
  const { path } = await findBrowser();
  const child = spawn(join(root, 'node_modules/.bin/node'), args, {
    env: { ...process.env, CHROME_PATH: path },
    stdio: 'ignore',
  });
  await once(child, 'exit');
  const text = readFileSync(report, 'utf8');
  rmSync(dirname(report), { recursive: true });
  return read(JSON.parse(text));
}

interface RawReport {
  categories: Record<string, { score: number; auditRefs: { id: string; weight: number }[] }>;
  audits: Record<string, { score: number | null }>;
}

function read({ categories: found, audits }: RawReport): LighthouseReport {
  const costly = Object.values(found).flatMap(({ auditRefs }) =>
    auditRefs.filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 0.9).map(({ id }) => id),
  );
  const scores = Object.fromEntries(categories.map((name) => [name, Math.round(100 * (found[name]?.score ?? 0))]));
  return { scores: scores as LighthouseReport['scores'], failed: [...new Set(costly)] };
}
