import { useState } from 'preact/hooks';
import { shareAddress } from '../../kernel/link/share-address.ts';
import { shareCode } from '../../kernel/link/share-code.ts';
import { type Shared, shareText } from '../../visit/record/share.ts';
import { QrDrawing } from './QrDrawing.tsx';

export interface SharePanelProps {
  /** Begins the ids of the panel's fields. */
  name: string;
  shared: Shared;
  /** The page that opens the link; without its fragment. */
  page: string;
}

/** A link and a QR code of what is typed. Both carry it themselves: nothing is uploaded. */
export function SharePanel({ name, shared, page }: SharePanelProps) {
  const [copied, setCopied] = useState('');
  const text = shareText(shared);
  if (!text.ok) return <p class="error">{text.problem.message}</p>;
  const address = shareAddress(page, text.value);
  const code = shareCode(address);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setCopied('Copied.');
    } catch {
      // No clipboard without a secure address: the person copies by hand.
      (document.getElementById(`${name}-link`) as HTMLInputElement | null)?.select();
      setCopied('Select the link and copy it by hand.');
    }
  };
  return (
    <div class="share-panel">
      <div class="field words">
        <label for={`${name}-link`}>Link</label>
        <p class="hint" id={`${name}-link-hint`}>
          The link itself carries what is typed. Nothing is uploaded; whoever has the link can read it.
        </p>
        <input id={`${name}-link`} type="text" readOnly value={address} aria-describedby={`${name}-link-hint`} />
      </div>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={() => void copy()}>
          Copy the link
        </button>
        <span role="status">{copied}</span>
      </p>
      {code.ok ? <QrDrawing code={code.value} /> : <p class="share-too-long">{code.problem.message}</p>}
    </div>
  );
}
