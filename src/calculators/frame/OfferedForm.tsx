import { useEffect, useRef } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { offeredBy } from './offered.ts';

interface Props {
  /** As it stands in the address. */
  share: string;
  name: string;
  fields: readonly FormField[];
  onTake: (typed: Typed) => void;
  onClose: () => void;
}

/** What a link holds, and the question whether to take it. */
export function OfferedForm({ share, name, fields, onTake, onClose }: Props) {
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    place.current?.scrollIntoView({ block: 'center' });
    place.current?.focus({ preventScroll: true });
  }, [share]);
  const offered = offeredBy(share, name, fields);
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
                onClose();
              }}
            >
              Fill it in here
            </button>
            <button type="button" class="plain" onClick={onClose}>
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
          <button type="button" class="plain" onClick={onClose}>
            Go on without it
          </button>
        </>
      )}
    </section>
  );
}
