import type { Answered, Asked } from './trace-messages.ts';
import { TraceSession } from './trace-session.ts';

/** The part of a worker's global object that is used here; the types of the page don't know it. */
const here = globalThis as unknown as {
  onmessage: (event: MessageEvent<Asked>) => void;
  postMessage: (answer: Answered) => void;
};

const session = new TraceSession();

here.onmessage = async ({ data }) => {
  const { id } = data;
  if (data.kind === 'measure') {
    here.postMessage({ kind: 'measured', id, measured: session.measure(data.typed) });
    return;
  }
  const opened = await session.open(data.file, data.name, data.mark, (progress) =>
    here.postMessage({ kind: 'progress', id, progress }),
  );
  here.postMessage({ kind: 'opened', id, opened });
};
