import type { Typed } from '../../kernel/form/field.ts';
import type { DecimalMark } from './read/number-cell.ts';
import type { Answered, Asked } from './trace-messages.ts';
import type { Measured, Opened, Progress } from './trace-session.ts';
import TraceWorker from './trace-worker.ts?worker';

export interface TraceClient {
  open: (
    file: Blob,
    name: string,
    mark: DecimalMark | undefined,
    onProgress: (progress: Progress) => void,
  ) => Promise<Opened>;
  measure: (typed: Typed) => Promise<Measured | undefined>;
  close: () => void;
}

/**
 * Reads files in a worker, so that the page stays responsive. A browser that refuses the worker reads them piece by piece in the
 * page itself: that takes its time, and loses nothing.
 */
export async function traceClient(): Promise<TraceClient> {
  try {
    return workerClient(await startedWorker());
  } catch {
    return pageClient();
  }
}

/** A worker whose script could not be loaded says so only by an event. */
function startedWorker(): Promise<Worker> {
  const worker = new TraceWorker();
  return new Promise((resolve, reject) => {
    worker.onerror = () => {
      worker.terminate();
      reject(new Error('no worker'));
    };
    worker.onmessage = () => resolve(worker);
    worker.postMessage({ kind: 'measure', id: 0, typed: {} } satisfies Asked);
  });
}

function workerClient(worker: Worker): TraceClient {
  let last = 0;
  const waiting = new Map<number, (answer: Answered) => void>();
  worker.onmessage = ({ data }: MessageEvent<Answered>) => waiting.get(data.id)?.(data);
  const ask = (asked: Asked, take: (answer: Answered) => void) => {
    waiting.set(asked.id, take);
    worker.postMessage(asked);
  };
  return {
    open: (file, name, mark, onProgress) =>
      new Promise((resolve) => {
        ask({ kind: 'open', id: ++last, file, name, ...(mark && { mark }) }, (answer) => {
          if (answer.kind === 'progress') onProgress(answer.progress);
          if (answer.kind !== 'opened') return;
          waiting.delete(answer.id);
          resolve(answer.opened);
        });
      }),
    measure: (typed) =>
      new Promise((resolve) => {
        ask({ kind: 'measure', id: ++last, typed }, (answer) => {
          waiting.delete(answer.id);
          resolve(answer.kind === 'measured' ? answer.measured : undefined);
        });
      }),
    close: () => worker.terminate(),
  };
}

async function pageClient(): Promise<TraceClient> {
  const { TraceSession } = await import('./trace-session.ts');
  const session = new TraceSession();
  return {
    open: (file, name, mark, onProgress) => session.open(file, name, mark, onProgress),
    measure: async (typed) => session.measure(typed),
    close: () => undefined,
  };
}
