import { useState } from 'preact/hooks';
import { SharePanel } from '../../ui/sharing/SharePanel.tsx';
import { exportVisit } from '../record/export-visit.ts';
import { shareText } from '../record/share.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { download } from './download.ts';

/** The visit as a file, a link or a QR code. */
export function SendVisit({ visit }: { visit: VisitRecord }) {
  const [shown, setShown] = useState(false);
  return (
    <>
      <p class="banner-actions">
        <button type="button" class="plain" onClick={() => download(exportVisit(visit))}>
          Export as a file
        </button>
        <button type="button" class="plain" aria-expanded={shown} onClick={() => setShown(!shown)}>
          Link and QR code
        </button>
      </p>
      {shown && (
        <SharePanel
          name="visit-share"
          share={shareText({ kind: 'visit', visit })}
          page={location.href.split('#')[0] ?? ''}
        />
      )}
    </>
  );
}
