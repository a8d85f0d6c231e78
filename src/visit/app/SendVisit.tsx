import { useContext, useState } from 'preact/hooks';
import { SharePanel } from '../../ui/sharing/SharePanel.tsx';
import { exportVisit } from '../record/export-visit.ts';
import { shareText } from '../record/share.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { photographTexts } from '../words/photographs.ts';
import { sendTexts } from '../words/visit.ts';
import { download } from './download.ts';
import { PhotographsContext } from './photographs/use-photographs.ts';
import { canShareFiles, shareFile } from './share-file.ts';
import type { VisitSession } from './use-session.ts';

/** The visit handed over: by the share sheet of the system, as a file, a link or a QR code. */
export function SendVisit({ visit, session }: { visit: VisitRecord; session: VisitSession }) {
  const photographs = useContext(PhotographsContext)?.photographs ?? [];
  const [linkShown, setLinkShown] = useState(false);
  const [message, setMessage] = useState('');
  const file = () => exportVisit(session.current() ?? visit, photographs);
  const save = (said: string) => {
    const made = file();
    download(made);
    setMessage(`${said}${sendTexts.saved(made.name)}`);
  };
  const share = async () => {
    const result = await shareFile(file());
    if (result === 'refused') save(sendTexts.refused);
    else setMessage(result === 'handed-over' ? sendTexts.handedOver : '');
  };
  return (
    <>
      <p class="banner-actions">
        {canShareFiles() && (
          <button type="button" class="plain" onClick={() => void share()}>
            Share …
          </button>
        )}
        <button type="button" class="plain" onClick={() => save('')}>
          Export as a file
        </button>
        <button type="button" class="plain" aria-expanded={linkShown} onClick={() => setLinkShown(!linkShown)}>
          Link and QR code
        </button>
      </p>
      <p role="status">{message}</p>
      {linkShown && (
        <>
          {photographs.length > 0 && <p>{photographTexts.notInLink}</p>}
          <SharePanel
            name="visit-share"
            share={shareText({ kind: 'visit', visit })}
            page={location.href.split('#')[0] ?? ''}
          />
        </>
      )}
    </>
  );
}
