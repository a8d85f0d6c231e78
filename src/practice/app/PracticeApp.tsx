import type { ComponentType } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { fragment } from '../../ui/fragment.ts';
import { StartPanel } from './StartPanel.tsx';

interface Props {
  /** Ids of the articles that the site has, to link to. */
  articles: readonly string[];
}

type Case = ComponentType<{ asked: string; articles: readonly string[] }>;

/** The start, or the case that the address names. The simulator is loaded only with a case. */
export function PracticeApp({ articles }: Props) {
  const [asked, setAsked] = useState(askedCase());
  const [Case, setCase] = useState<Case>();
  const place = useRef<HTMLDivElement>(null);
  const first = useRef(true);

  useLayoutEffect(() => {
    const follow = () => setAsked(askedCase());
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);

  useEffect(() => {
    if (asked === undefined || Case !== undefined) return;
    void import('./PracticeCase.tsx').then((module) => setCase(() => module.PracticeCase));
  }, [asked]);

  useEffect(() => {
    if (!first.current) {
      scrollTo(0, 0);
      place.current?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
    }
    first.current = false;
  }, [asked, Case]);

  return <div ref={place}>{view()}</div>;

  function view() {
    if (asked === undefined) return <StartPanel />;
    return Case === undefined ? <p>Opening the case …</p> : <Case key={asked} asked={asked} articles={articles} />;
  }
}

/** The code in the address, `#7K3-…` or `?case=7K3-…`, as typed; undefined for the start page. */
function askedCase(): string | undefined {
  const asked = location.hash.length > 1 ? fragment() : new URLSearchParams(location.search).get('case');
  return asked === null || asked === '' || asked === 'content' ? undefined : asked;
}
