import { useEffect, useState } from 'preact/hooks';
import type { FormField, Typed } from '../../kernel/form/field.ts';
import { shareInAddress } from '../../kernel/link/share-address.ts';
import { href } from '../../ui/href.ts';
import { loadAgain } from '../../ui/load-again.ts';

interface Props {
  name: string;
  fields: readonly FormField[];
  onTake: (typed: Typed) => void;
}

type Parts = typeof import('./OfferedForm.tsx');

/**
 * Asks before a form from a link replaces what stands here. Nothing is filled in or kept until the person says so. What
 * reads a link is loaded only if there is one.
 */
export function SharedForm({ name, fields, onTake }: Props) {
  const [share, setShare] = useState<string>();
  const [parts, setParts] = useState<Parts>();
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    const look = () => {
      const inAddress = shareInAddress(location.hash);
      if (inAddress === null || location.pathname !== href(`/calculators/${name}/`)) return;
      setShare(inAddress);
      import('./OfferedForm.tsx').then(setParts, () => setFailed(true));
    };
    look();
    addEventListener('hashchange', look);
    return () => removeEventListener('hashchange', look);
  }, []);

  const close = () => {
    setShare(undefined);
    // A reload must not ask again.
    history.replaceState(null, '', location.pathname + location.search);
  };
  if (share === undefined) return null;
  if (parts !== undefined)
    return <parts.OfferedForm share={share} name={name} fields={fields} onTake={onTake} onClose={close} />;
  if (!failed) return null;
  return (
    <section class="shared-form" aria-label="From a link">
      <p role="alert">The readings in this link could not be loaded: there is no network. Nothing was filled in.</p>
      <button type="button" class="plain" onClick={() => void loadAgain()}>
        Try again
      </button>
    </section>
  );
}
