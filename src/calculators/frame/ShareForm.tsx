import { useState } from 'preact/hooks';
import type { Typed } from '../../kernel/form/field.ts';
import { href } from '../../ui/href.ts';

interface Props {
  name: string;
  typed: Typed;
}

type Parts = Pick<typeof import('../../ui/sharing/SharePanel.tsx'), 'SharePanel'> &
  Pick<typeof import('./calculator-link.ts'), 'shareEntries'>;

/** A link and a QR code of a filled calculator. What makes them is loaded only when asked for. */
export function ShareForm({ name, typed }: Props) {
  const [parts, setParts] = useState<Parts>();
  const [failed, setFailed] = useState(false);
  const [shown, setShown] = useState(false);
  const toggle = async () => {
    setShown(!shown);
    if (parts !== undefined) return;
    try {
      const [{ SharePanel }, { shareEntries }] = await Promise.all([
        import('../../ui/sharing/SharePanel.tsx'),
        import('./calculator-link.ts'),
      ]);
      setParts({ SharePanel, shareEntries });
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  const form = Object.fromEntries(Object.entries(typed).filter(([, value]) => value !== ''));
  return (
    <div class="share-form">
      <button type="button" class="plain" aria-expanded={shown} onClick={() => void toggle()}>
        Link and QR code of this form
      </button>
      {shown && failed && (
        <p role="alert">This part could not be loaded: there is no network. Your entries are kept; try again later.</p>
      )}
      {shown && parts && (
        <parts.SharePanel
          name={`${name}-share`}
          share={parts.shareEntries({ calculator: name, form })}
          page={new URL(href(`/calculators/${name}/`), location.href).href}
        />
      )}
    </div>
  );
}
