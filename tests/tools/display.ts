import { patience } from './browser.ts';
import { killGroup, startGroup } from './processes.ts';

export interface Display {
  /** For the variable DISPLAY. */
  name: string;
  close: () => void;
}

/** A screen in memory, on a display number that is free. */
export async function startDisplay(): Promise<Display> {
  const server = startGroup('Xvfb', ['-displayfd', '1', '-screen', '0', '1600x1400x24', '-nolisten', 'tcp']);
  const number = await firstLine(server.stdout, 'Xvfb');
  return { name: `:${number}`, close: () => killGroup(server) };
}

/** The first line that a program writes; fails if it ends or writes nothing for long. */
function firstLine(output: NodeJS.ReadableStream | null, program: string): Promise<string> {
  return new Promise((done, fail) => {
    let text = '';
    const late = setTimeout(() => fail(new Error(`${program} does not start`)), patience);
    output?.on('end', () => fail(new Error(`${program} has ended: ${text}`)));
    output?.on('data', (more) => {
      text += more;
      if (!text.includes('\n')) return;
      clearTimeout(late);
      done(text.split('\n')[0]?.trim() ?? '');
    });
  });
}
