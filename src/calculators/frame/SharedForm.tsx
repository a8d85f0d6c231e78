import { useEffect, useRef, useState } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { shareInAddress } from '../../kernel/link/share-address.ts';
import { href } from '../../ui/href.ts';
import type { Offered } from './offered.ts';

interface Props {
  name: string;
  fields: readonly FormField[];
  onTake: (typed: Typed) => void;
}

/** Asks before a form from a link replaces what stands here. Nothing is filled in or kept until the person says so. */
export function SharedForm({ name, fields, onTake }: Props) {
  const [offered, setOffered] = useState<Offered>();
  const place = useRef<HTMLElement>(null);

  useEffect(() => {
    const look = async () => {
      const share = shareInAddress(location.hash);
      if (share === null || location.pathname !== href(`/calculators/${name}/`)) return;
      const { offeredBy } = await import('./offered.ts');
      setOffered(offeredBy(share, name, fields));
    };
    void look();
    addEventListener('hashchange', look);
    return () => removeEventListener('hashchange', look);
  }, []);

  useEffect(() => {
    if (offered === undefined) return;
    place.current?.scrollIntoView({ block: 'center' });
    place.current?.focus({ preventScroll: true });
  }, [offered]);

  const close = () => {
    setOffered(undefined);
    // A reload must not ask again.
    history.replaceState(null, '', location.pathname + location.search);
  };
  if (offered === undefined) return null;
  return (
    <section class="shared-form" ref={place} tabIndex={-1} aria-label="From a link">
      {offered.kind === 'form' && (
        <>
          <p>
            <b>This link holds a filled form.</b> Nothing is filled in yet. Check the readings before you act on them:
            somebody typed them.
          </p>
          <ul>
            {offered.entries.map(({ name: what, value }) => (
              <li key={what}>
                {what}: <b>{value}</b>
              </li>
            ))}
          </ul>
          <p class="banner-actions">
            <button
              type="button"
              class="primary"
              onClick={() => {
                onTake(offered.typed);
                close();
              }}
            >
              Fill it in here
            </button>
            <button type="button" class="plain" onClick={close}>
              Leave it
            </button>
          </p>
        </>
      )}
      {offered.kind === 'elsewhere' && (
        <p>
          This link belongs to another page: <a href={offered.address}>open it there</a>.
        </p>
      )}
      {offered.kind === 'refused' && (
        <>
          <p role="alert">
            <b>This link can’t be opened.</b> {offered.message} Nothing was filled in.
          </p>
          <button type="button" class="plain" onClick={close}>
            Go on without it
          </button>
        </>
      )}
    </section>
  );
}
