import { useMemo, useState } from 'preact/hooks';
import type { Action } from '../case/action.ts';
import type { CaseKey } from '../case/case-code.ts';
import type { Conclusion } from '../case/conclusion.ts';
import { type Entry, Session } from '../case/session.ts';
import { keepCase, keptCase } from './kept-case.ts';

export interface CaseUnderWay {
  session: Session;
  conclusion: Conclusion | undefined;
  last: Entry | undefined;
  act: (action: Action) => void;
  conclude: (conclusion: Conclusion) => void;
  /** The same case from the beginning. */
  again: () => void;
}

/** A case with what was done before, if that is kept. Every act is kept at once. */
export function useCase(key: CaseKey, code: string): CaseUnderWay {
  const kept = useMemo(() => {
    const found = keptCase();
    return found?.code === code ? found : undefined;
  }, []);
  const [session, setSession] = useState(() => new Session(key, kept?.actions));
  const [conclusion, setConclusion] = useState(kept?.conclusion);
  const [last, setLast] = useState<Entry>();
  const keep = (of: Session, ended?: Conclusion) => {
    const actions = of.entries.map(({ action }) => action);
    keepCase({ code, actions, ...(ended === undefined ? {} : { conclusion: ended }) });
  };
  return {
    session,
    conclusion,
    last,
    act: (action) => {
      setLast(session.do(action));
      keep(session);
    },
    conclude: (ended) => {
      keep(session, ended);
      setConclusion(ended);
    },
    again: () => {
      const fresh = new Session(key);
      keep(fresh);
      setSession(fresh);
      setConclusion(undefined);
      setLast(undefined);
    },
  };
}
