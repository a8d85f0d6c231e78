import { useContext } from 'preact/hooks';
import { exportVisit } from '../record/export-visit.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { download } from './download.ts';
import { releasePhotographs } from './photographs/held-photographs.ts';
import { PhotographsContext } from './photographs/use-photographs.ts';
import { visitHash } from './route.ts';
import { releaseUnsaved } from './unsaved-visits.ts';
import type { VisitSession } from './use-session.ts';

interface Props {
  session: VisitSession;
  store: VisitStore;
}

/** The time of the last save, or a banner that says what to do if the last change is not saved. */
export function SaveStatus({ session, store }: Props) {
  const { evaluated, trouble, savedAt, typing, changedElsewhere } = session;
  const photographs = useContext(PhotographsContext)?.photographs;
  if (evaluated === undefined) return null;
  return (
    <>
      <p class="save-status">
        {typing && !trouble && 'Saving …'}
        {/* Not announced again after each word. */}
        <span role="status" hidden={typing && !trouble}>
          {trouble ? 'Not saved' : savedAt ? `Saved ${savedAt}` : ''}
        </span>
      </p>
      {/* The empty region must stay in the page, or its content is not announced when it appears. */}
      <div class="save-trouble" role="alert">
        {trouble && (
          <>
            <p>
              <b>The last change is not saved.</b> {trouble.problem.message}
            </p>
            <p class="banner-actions">
              <Remedy session={session} store={store} />
              <button
                type="button"
                class="plain"
                onClick={() => download(exportVisit(session.current() ?? evaluated.visit, photographs))}
              >
                Export this visit as a file
              </button>
            </p>
          </>
        )}
        {!trouble && changedElsewhere === 'saved' && (
          <>
            <p>This visit was changed in another tab. What you see here is older.</p>
            <p class="banner-actions">
              <button type="button" class="plain" onClick={session.reload}>
                Show the newer one
              </button>
            </p>
          </>
        )}
        {!trouble && changedElsewhere === 'removed' && (
          <p>This visit was deleted in another tab. Your next change asks you whether to put it back.</p>
        )}
      </div>
    </>
  );
}

function Remedy({ session, store }: Props) {
  const { trouble, retry } = session;
  const photographs = useContext(PhotographsContext)?.photographs;
  if (trouble === undefined) return null;
  const { kind } = trouble.problem;
  if (kind === 'conflict') {
    const keepBoth = async () => {
      const mine = session.current() ?? trouble.mine;
      const result = await store.add(mine, 'keep-both', photographs);
      if (!result.ok) return retry();
      releaseUnsaved(mine.id);
      releasePhotographs(mine.id);
      location.hash = visitHash(result.value.id);
    };
    return (
      <>
        <button type="button" class="primary" onClick={() => void keepBoth()}>
          Keep both
        </button>
        <a class="button" href={visitHash(trouble.mine.id)} target="_blank" rel="noreferrer">
          Look at the other one in a new tab
        </a>
      </>
    );
  }
  if (kind === 'deleted-elsewhere') {
    const putBack = async () => {
      const restored = await store.restore({ ...trouble.mine }, photographs);
      if (restored.ok) releasePhotographs(trouble.mine.id);
      retry();
    };
    return (
      <button type="button" class="primary" onClick={() => void putBack()}>
        Put it back
      </button>
    );
  }
  return (
    <button type="button" class="primary" onClick={retry}>
      Try again
    </button>
  );
}
