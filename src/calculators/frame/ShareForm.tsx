import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import type { Typed } from '../../kernel/form/field.ts';
import { href } from '../../ui/href.ts';
import type { SharePanelProps } from '../../ui/sharing/SharePanel.tsx';

interface Props {
  name: string;
  typed: Typed;
}

/** A link and a QR code of a filled calculator. What makes them is loaded only when asked for. */
export function ShareForm({ name, typed }: Props) {
  const [Panel, setPanel] = useState<ComponentType<SharePanelProps>>();
  const [failed, setFailed] = useState(false);
  const [shown, setShown] = useState(false);
  const toggle = async () => {
    setShown(!shown);
    if (Panel !== undefined) return;
    try {
      const { SharePanel } = await import('../../ui/sharing/SharePanel.tsx');
      setPanel(() => SharePanel);
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
      {shown && Panel && (
        <Panel
          name={`${name}-share`}
          shared={{ kind: 'calculator', calculator: name, form }}
          page={new URL(href(`/calculators/${name}/`), location.href).href}
        />
      )}
    </div>
  );
}
