import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { VisitReport } from '../report/VisitReport.tsx';
import { type VisitStore, visitStore } from '../storage/visit-store.ts';
import { BackgroundContext, useLoadedBackground } from './background.ts';
import { PhotographsContext, usePhotographs } from './photographs/use-photographs.ts';
import { listHash, type Route, routeOf } from './route.ts';
import { SharedVisit } from './SharedVisit.tsx';
import { warnBeforeLoss } from './unsaved-visits.ts';
import { useSession } from './use-session.ts';
import { VisitList } from './VisitList.tsx';
import { VisitScreen } from './VisitScreen.tsx';
import { visitTitle } from './visit-summary.ts';

/** The view that the fragment of the address names: the list, a visit, its report, or a visit from a link. */
export function VisitApp() {
  const [route, setRoute] = useState<Route>(() => routeOf(location.hash) ?? { view: 'list' });
  const store = useMemo(() => visitStore(), []);
  const place = useRef<HTMLDivElement>(null);
  const first = useRef(true);

  // Before the first frame: a change of address after it would be lost.
  useLayoutEffect(() => {
    const follow = () => setRoute((before) => routeOf(location.hash) ?? before);
    addEventListener('hashchange', follow);
    const stopWarning = warnBeforeLoss();
    return () => {
      removeEventListener('hashchange', follow);
      stopWarning();
      store.close();
    };
  }, []);

  const goToTop = () => {
    if (first.current) {
      first.current = false;
      return;
    }
    scrollTo(0, 0);
    place.current?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
  };
  return <div ref={place}>{view(route, store, goToTop)}</div>;
}

function view(route: Route, store: VisitStore, onShown: () => void) {
  switch (route.view) {
    case 'list':
      return (
        <TitledView title="Visits" onShown={onShown}>
          <VisitList store={store} />
        </TitledView>
      );
    case 'shared':
      return (
        <TitledView title="A visit from a link" onShown={onShown}>
          <SharedVisit key={route.share} share={route.share} store={store} />
        </TitledView>
      );
    default:
      return (
        <OpenVisit key={route.id} id={route.id} report={route.view === 'report'} store={store} onShown={onShown} />
      );
  }
}

interface OpenProps {
  id: string;
  report: boolean;
  store: VisitStore;
  onShown: () => void;
}

function OpenVisit({ id, report, store, onShown }: OpenProps) {
  const session = useSession(store, id);
  const photographs = usePhotographs(store, id);
  const { evaluated, missing } = session;
  const background = useLoadedBackground(evaluated?.visit);
  if (missing !== undefined) {
    return (
      <TitledView title="Visit not found" onShown={onShown}>
        <h1 tabIndex={-1}>This visit can’t be opened</h1>
        <p role="alert">{missing.message}</p>
        <p>
          <a class="button" href={listHash}>
            To the visits on this device
          </a>
        </p>
      </TitledView>
    );
  }
  if (evaluated === undefined) return <p>Opening the visit …</p>;
  const title = visitTitle(evaluated.visit);
  const opened = report ? (
    <TitledView key="report" title={`Report: ${title}`} onShown={onShown}>
      <VisitReport evaluated={evaluated} />
    </TitledView>
  ) : (
    <TitledView key="visit" title={title} onShown={onShown}>
      <VisitScreen evaluated={evaluated} session={session} store={store} />
    </TitledView>
  );
  return (
    <BackgroundContext.Provider value={background}>
      <PhotographsContext.Provider value={photographs}>{opened}</PhotographsContext.Provider>
    </BackgroundContext.Provider>
  );
}

interface TitledViewProps {
  title: string;
  onShown: () => void;
  children: ComponentChildren;
}

/** A view with its title in the browser's tab; when it appears, reading starts at its heading. */
function TitledView({ title, onShown, children }: TitledViewProps) {
  useEffect(onShown, []);
  useEffect(() => {
    document.title = document.title.replace(/^.*?(?= · )/, () => title);
  }, [title]);
  return <>{children}</>;
}
