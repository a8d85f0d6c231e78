import { type ChildProcess, spawn } from 'node:child_process';
import { delimiter, resolve } from 'node:path';
import { root } from './paths.ts';

/** Vitest sets these for its own tests; a build started from a test must not inherit them. */
const ofVitest = /^(NODE_ENV|BASE_URL|DEV|PROD|MODE|SSR|TEST|VITEST.*)$/;

/**
 * Runs a tool from node_modules/.bin with the terminal of this process and resolves to its exit code.
 * The folder goes first on the path so that the tool gets the Node of the `node` package, whatever the host has.
 */
export function run(tool: string, args: string[], env: NodeJS.ProcessEnv = {}): Promise<number> {
  return ended(start(tool, args, env, 'inherit'));
}

/** The same for a tool that runs beside another one: what it prints comes whole when it has ended. */
export async function runBeside(tool: string, args: string[]): Promise<{ code: number; printed: string }> {
  const child = start(tool, args, {}, 'pipe');
  let printed = '';
  for (const stream of [child.stdout, child.stderr])
    stream?.setEncoding('utf8').on('data', (text: string) => {
      printed += text;
    });
  return { code: await ended(child), printed };
}

function start(tool: string, args: string[], env: NodeJS.ProcessEnv, output: 'inherit' | 'pipe'): ChildProcess {
  const bin = resolve(root, 'node_modules/.bin');
  const outer = Object.entries(process.env).filter(([name]) => !process.env.VITEST || !ofVitest.test(name));
  const path = `${bin}${delimiter}${process.env.PATH}`;
  return spawn(tool, args, {
    cwd: root,
    stdio: ['ignore', output, output],
    env: { ...Object.fromEntries(outer), ...env, PATH: path },
  });
}

const ended = (child: ChildProcess): Promise<number> =>
  new Promise((done, fail) => {
    child.on('error', fail);
    child.on('close', (code) => done(code ?? 1));
  });

/** Astro's usage reports are off: nothing leaves the machine. */
export const astro = (args: string[]) => run('astro', args, { ASTRO_TELEMETRY_DISABLED: '1' });
