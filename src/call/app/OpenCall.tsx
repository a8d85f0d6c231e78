import { useMemo, useState } from 'preact/hooks';
import type { Typed } from '../../kernel/form/field.ts';
import { fillForm } from '../../kernel/form/field.ts';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { useFields } from '../../ui/form/use-fields.ts';
import { href } from '../../ui/href.ts';
import { oneAtATime } from '../../ui/one-at-a-time.ts';
import { download } from '../../visit/app/download.ts';
import { visitHash } from '../../visit/app/route.ts';
import { exportVisit } from '../../visit/record/export-visit.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import { newId } from '../../visit/storage/new-id.ts';
import { visitStore } from '../../visit/storage/visit-store.ts';
import { callFields, readCall } from '../form.ts';
import { openQuestions } from '../rule/to-ask.ts';
import { visitFromCall } from '../visit-from-call.ts';
import { questionTexts, sheetTexts } from '../words/sheet.ts';
import { CallForm } from './CallForm.tsx';
import { CallSheetView } from './CallSheetView.tsx';
import { type KeptCall, keepCall } from './kept-calls.ts';
import { nameInAddress } from './route.ts';

/** One call: what the caller says, and the sheet that follows from it. Each key is kept. */
export function OpenCall({ call }: { call: KeptCall }) {
  const start = useMemo(() => fillForm(callFields, call.form), [call]);
  const [refused, setRefused] = useState(false);
  const keep = (form: Typed) => {
    setRefused(!keepCall({ ...call, form, changedAt: isoTime(new Date()) }));
    nameInAddress(call.id);
  };
  const form = useFields({ fields: callFields, start, onTyped: keep, onSettled: () => undefined });
  return (
    <div class="call-sides">
      <div>
        <CallForm form={form} />
        <NextQuestion form={form.typed} />
      </div>
      <div class="call-result">
        {refused && (
          <p role="alert" class="save-trouble">
            This browser keeps nothing for this site: print the sheet or begin the visit before you close this window.
          </p>
        )}
        <CallSheetView form={form.typed} at={call.at} />
        <CallActions call={call} form={form.typed} />
      </div>
    </div>
  );
}

/** The next question, in sight while the form is filled in on a small screen. */
function NextQuestion({ form }: { form: Typed }) {
  const [question] = openQuestions(readCall(form));
  return (
    <div class="call-next">
      <p>
        {question !== undefined && (
          <>
            <b>{sheetTexts.next}:</b> {questionTexts[question].ask}
          </>
        )}
      </p>
      <button
        type="button"
        class="plain"
        // No link: the fragment names the call.
        onClick={() => document.getElementById('call-sheet')?.scrollIntoView()}
      >
        {sheetTexts.toSheet}
      </button>
    </div>
  );
}

/** On paper, or on to the visit. */
function CallActions({ call, form }: { call: KeptCall; form: Typed }) {
  const [failed, setFailed] = useState<{ message: string; visit: VisitRecord }>();
  const tap = useMemo(oneAtATime, []);
  const begin = async () => {
    const store = visitStore();
    const visit = visitFromCall(form, newId(), isoTime(new Date()), call.at);
    const result = await store.save(visit);
    store.close();
    if (result.ok) location.assign(`${href('/visit/')}${visitHash(visit.id)}`);
    else setFailed({ message: result.problem.message, visit });
  };
  return (
    <div class="call-actions">
      <p class="hint">{sheetTexts.beginHint}</p>
      <p class="banner-actions">
        <button type="button" class="primary" onClick={() => tap(begin)}>
          {sheetTexts.begin}
        </button>
        <button type="button" class="plain" onClick={() => print()}>
          Print the sheet
        </button>
      </p>
      {failed && (
        <div role="alert" class="save-trouble">
          <p>{failed.message}</p>
          <button type="button" class="plain" onClick={() => download(exportVisit(failed.visit))}>
            Take the visit out as a file
          </button>
        </div>
      )}
    </div>
  );
}
