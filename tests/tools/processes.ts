import { type ChildProcess, spawn } from 'node:child_process';

const groups = new Set<number>();

/** Starts a program in its own process group, which ends with this process (except after SIGKILL). */
export function startGroup(program: string, args: string[], env: NodeJS.ProcessEnv = process.env): ChildProcess {
  const child = spawn(program, args, { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
  // If the program can't be started, its missing output is reported elsewhere.
  child.on('error', () => undefined);
  if (child.pid !== undefined) groups.add(child.pid);
  return child;
}

/** Kills the program and all that it started. */
export function killGroup({ pid }: ChildProcess): void {
  if (pid === undefined || !groups.delete(pid)) return;
  try {
    process.kill(-pid, 'SIGKILL');
  } catch {
    // It has ended by itself.
  }
}

function killAll(): void {
  for (const pid of groups) killGroup({ pid } as ChildProcess);
}

process.once('exit', killAll);
for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP'] as const) {
  process.once(signal, () => {
    killAll();
    process.exit(1);
  });
}
