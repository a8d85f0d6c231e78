import type { ComponentChildren } from 'preact';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { type Form, textOf } from '../../visit/steps/fields.ts';
import { symptomTexts } from '../../visit/steps/symptom/question.ts';
import { causeTexts } from '../../visit/words/causes.ts';
import { readCall } from '../form.ts';
import { groups, things } from '../rule/bring.ts';
import { type CallSheet, callSheet } from '../rule/call-sheet.ts';
import {
  groupNames,
  minutesText,
  permitTexts,
  personTexts,
  questionTexts,
  safetyTexts,
  sheetTexts,
  thingTexts,
  whySuspect,
} from '../words/sheet.ts';
import { SaidLines } from './SaidLines.tsx';

interface Props {
  form: Form;
  /** When the call began, as an ISO time. */
  at: string;
}

/** The call sheet, on the screen and on one sheet of paper. */
export function CallSheetView({ form, at }: Props) {
  const facts = readCall(form);
  const sheet = callSheet(facts);
  const { moment } = facts;
  const name = [textOf(form, 'machine'), textOf(form, 'axis')].map((part) => part.trim()).filter(Boolean);
  return (
    <section class="call-sheet" aria-labelledby="call-sheet">
      <h2 id="call-sheet">Call sheet{name.length > 0 && `: ${name.join(', ')}`}</h2>
      <p class="call-proof">
        {shownTime(at)}. {sheetTexts.proof}
      </p>
      <SaidLines form={form} />
      <div class="call-columns">
        <Part title="Say to the caller" kind="say">
          <ul>
            {sheet.safety.map((word) => (
              <li key={word}>{safetyTexts[word]}</li>
            ))}
          </ul>
        </Part>
        <Part title="Ask back" kind="ask">
          <ol>
            {sheet.questions.map((question) => (
              <li key={question}>
                {questionTexts[question].ask} <small>Decides {questionTexts[question].decides}.</small>
              </li>
            ))}
          </ol>
        </Part>
        <Part title="Suspect, and why" kind="suspect">
          <p>
            {moment === undefined
              ? facts.momentUnseen
                ? sheetTexts.unseen
                : sheetTexts.noMoment
              : sheetTexts.moment(symptomTexts[moment].label, symptomTexts[moment].likely)}
          </p>
          <Suspects sheet={sheet} />
        </Part>
        <Part title="Bring" kind="bring">
          <Things sheet={sheet} />
        </Part>
        <Part title="People and permits" kind="people">
          <ul class="call-ticks">
            {sheet.people.map((person) => (
              <li key={person}>{personTexts[person]}</li>
            ))}
            {sheet.permits.map((permit) => (
              <li key={permit}>{permitTexts[permit]}</li>
            ))}
          </ul>
        </Part>
        <Part title="Time to plan" kind="time">
          <p>{minutesText(sheet.minutes)}</p>
        </Part>
      </div>
    </section>
  );
}

function Part({ title, kind, children }: { title: string; kind: string; children: ComponentChildren }) {
  return (
    <section class="call-block" data-part={kind} aria-labelledby={`call-${kind}`}>
      <h3 id={`call-${kind}`}>{title}</h3>
      {children}
    </section>
  );
}

function Suspects({ sheet: { suspects, others } }: { sheet: CallSheet }) {
  return (
    <>
      {suspects.length > 0 && (
        <ol>
          {suspects.map((suspect) => (
            <li key={suspect.cause}>
              <b>{causeTexts[suspect.cause].name}.</b> {whySuspect(suspect)}.{' '}
              <small>{causeTexts[suspect.cause].tell}</small>
            </li>
          ))}
        </ol>
      )}
      <p class="call-others">
        <b>{sheetTexts.others}:</b> {others.map((cause) => causeTexts[cause].name).join('; ')}.
      </p>
    </>
  );
}

function Things({ sheet: { bring } }: { sheet: CallSheet }) {
  return (
    <>
      {groups.map((group) => {
        const listed = bring.filter((thing) => things[thing].group === group);
        return listed.length === 0 ? null : (
          <div key={group}>
            <h4>{groupNames[group]}</h4>
            {group === 'spares' && <p class="call-spares">{sheetTexts.spares}</p>}
            <ul class="call-ticks">
              {listed.map((thing) => (
                <li key={thing}>{thingTexts[thing]}</li>
              ))}
            </ul>
          </div>
        );
      })}
    </>
  );
}
