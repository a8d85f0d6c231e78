import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { axisStore } from '../storage/axis-store.ts';
import { axisTitle } from '../words/axis.ts';
import { AxisList } from './AxisList.tsx';
import { AxisScreen } from './AxisScreen.tsx';
import { NewAxis } from './NewAxis.tsx';
import { listHash, type Route, routeOf } from './route.ts';
import { useRegister } from './use-register.ts';

/** The register: its list, one axis, or the form of a new one, as the fragment of the address says. */
export function AxesApp() {
  const [route, setRoute] = useState<Route>(() => routeOf(location.hash) ?? { view: 'list' });
  const store = useMemo(() => axisStore(), []);
  const open = useRegister(store);
  const place = useRef<HTMLDivElement>(null);
  const first = useRef(true);

  // Before the first frame: a change of address after it would be lost.
  useLayoutEffect(() => {
    const follow = () => setRoute((before) => routeOf(location.hash) ?? before);
    addEventListener('hashchange', follow);
    return () => {
      removeEventListener('hashchange', follow);
      store.close();
    };
  }, []);

  const shown = route.view === 'axis' ? route.id : route.view;
  useEffect(() => {
    if (open.register === undefined) return;
    if (!first.current) {
      scrollTo(0, 0);
      place.current?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
    }
    first.current = false;
  }, [shown, open.register === undefined]);

  const { register, problem } = open;
  const axis =
    route.view === 'axis'
      ? register?.axes.find(({ id, merged }) => id === route.id || merged.some((one) => one.id === route.id))
      : undefined;
  const title = axis ? axisTitle(axis.names) : route.view === 'new' ? 'New axis' : 'Axes';
  useEffect(() => {
    document.title = document.title.replace(/^.*?(?= · )/, () => title);
  }, [title]);

  return (
    <div ref={place}>
      {problem && <p role="alert">{problem.message}</p>}
      {register === undefined && !problem && <p>Reading the visits of this device …</p>}
      {register && route.view === 'list' && <AxisList open={open} register={register} />}
      {register && route.view === 'new' && <NewAxis open={open} register={register} />}
      {register && axis && <AxisScreen key={axis.id} axis={axis} open={open} register={register} store={store} />}
      {register && route.view === 'axis' && axis === undefined && (
        <>
          <h1 tabIndex={-1}>This axis is not on this device</h1>
          <p>
            <a class="button" href={listHash}>
              To the axes on this device
            </a>
          </p>
        </>
      )}
    </div>
  );
}
