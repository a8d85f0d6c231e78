import { useEffect, useState } from 'preact/hooks';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { newId } from '../../visit/storage/new-id.ts';
import { sheetTexts } from '../words/sheet.ts';
import { CallList } from './CallList.tsx';
import { type KeptCall, keptCall } from './kept-calls.ts';
import { OpenCall } from './OpenCall.tsx';
import { callIn } from './route.ts';

/** `#call=ID` names a kept call; without it a new one begins. */
function callOf(hash: string): KeptCall {
  const id = callIn(hash);
  const at = isoTime(new Date());
  return (id !== null ? keptCall(id) : undefined) ?? { id: newId(), at, changedAt: at, form: {} };
}

/** The page of the call sheet: one call, and the calls of this device. */
export function CallApp() {
  const [call, setCall] = useState(() => callOf(location.hash));
  useEffect(() => {
    const follow = () => {
      // An anchor within the page changes nothing.
      if (/^(#call=.*|#?)$/.test(location.hash)) setCall(callOf(location.hash));
    };
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, []);
  const begin = () => {
    history.pushState(null, '', location.pathname);
    setCall(callOf(''));
    scrollTo(0, 0);
  };
  return (
    <>
      <h1 tabIndex={-1}>Call sheet</h1>
      <p class="call-lead">
        {sheetTexts.lead} <b>{sheetTexts.first}</b>
      </p>
      <OpenCall key={call.id} call={call} />
      <CallList open={call.id} onBegin={begin} />
    </>
  );
}
