import { useMemo, useState } from 'preact/hooks';
import type { Action } from '../case/action.ts';
import type { CaseKey } from '../case/case-code.ts';
import { CaseRun, type Entry } from '../case/case-run.ts';
import type { Conclusion } from '../case/conclusion.ts';
import { keepCase, keptCase } from './kept-case.ts';

export interface CaseUnderWay {
  run: CaseRun;
  conclusion: Conclusion | undefined;
  last: Entry | undefined;
  act: (action: Action) => void;
  conclude: (conclusion: Conclusion) => void;
  /** Restarts the same case. */
  again: () => void;
}

/** A case with the acts stored on this device, if any. Every act is stored at once. */
export function useCase(key: CaseKey, code: string): CaseUnderWay {
  const kept = useMemo(() => {
    const found = keptCase();
    return found?.code === code ? found : undefined;
  }, []);
  const [run, setSession] = useState(() => new CaseRun(key, kept?.actions));
  const [conclusion, setConclusion] = useState(kept?.conclusion);
  const [last, setLast] = useState<Entry>();
  const keep = (of: CaseRun, ended?: Conclusion) => {
    const actions = of.entries.map(({ action }) => action);
    keepCase({ code, actions, ...(ended === undefined ? {} : { conclusion: ended }) });
  };
  return {
    run,
    conclusion,
    last,
    act: (action) => {
      setLast(run.do(action));
      keep(run);
    },
    conclude: (ended) => {
      keep(run, ended);
      setConclusion(ended);
    },
    again: () => {
      const fresh = new CaseRun(key);
      keep(fresh);
      setSession(fresh);
      setConclusion(undefined);
      setLast(undefined);
    },
  };
}
