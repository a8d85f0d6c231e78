import { useState } from 'preact/hooks';
import { qrCodeOf } from '../../kernel/link/qr-code.ts';
import type { ShareResult } from '../../kernel/link/share.ts';
import { shareAddress } from '../../kernel/link/share-address.ts';
import { QrDrawing } from './QrDrawing.tsx';

interface SharePanelProps {
  /** Prefix of the ids of the panel's fields. */
  name: string;
  /** The content of the link, or why there is none. */
  share: ShareResult<string>;
  /** The page that opens the link, without a fragment. */
  page: string;
}

/** A link and a QR code with what is typed. Both contain the data themselves: nothing is uploaded. */
export function SharePanel({ name, share, page }: SharePanelProps) {
  const [copied, setCopied] = useState('');
  if (!share.ok) return <p class="error">{share.problem.message}</p>;
  const address = shareAddress(page, share.value);
  const code = qrCodeOf(address);
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
          The link itself carries what is typed. Nothing is uploaded; anybody who has the link can read it.
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
