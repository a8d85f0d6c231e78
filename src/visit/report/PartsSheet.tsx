import type { EvaluatedVisit } from '../evaluate.ts';
import type { StepId } from '../steps/ids.ts';
import { sheetTexts } from '../words/sheets.ts';
import type { MeasuredReport } from './measured.ts';
import { partRows } from './parts-rows.ts';
import { ReportDrawings } from './ReportDrawings.tsx';
import { ReportNextDrive } from './ReportNextDrive.tsx';

interface Props {
  evaluated: EvaluatedVisit;
  measured: readonly MeasuredReport[];
  /** The steps that count. */
  ids: readonly StepId[];
}

/** What to order and what not, by plate, with the reason and where the fault is, on one sheet. */
export function PartsSheet({ evaluated, measured, ids }: Props) {
  const { visit, answers, guide } = evaluated;
  const { decision } = guide;
  const counted = Object.fromEntries(ids.map((id) => [id, answers[id]]).filter(([, answer]) => answer !== undefined));
  const rows = decision === undefined ? [] : partRows(decision, visit);
  const replaces = decision !== undefined && decision.replace.length > 0;
  return (
    <>
      <p>
        <b>{replaces ? sheetTexts.onlyThese : sheetTexts.orderNothing}</b>
      </p>
      {rows.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be within reach of the keyboard
        <section class="table-scroll" tabIndex={0} aria-label={sheetTexts.parts}>
          <table class="report-parts">
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col">What to do</th>
                <th scope="col">Plate</th>
                <th scope="col">Why</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ part, name, what, plate, why }) => (
                <tr key={part}>
                  <th scope="row">{name}</th>
                  <td>
                    <b>{what}</b>
                  </td>
                  <td>{plate || sheetTexts.notNoted}</td>
                  <td>{why}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      {measured.some(({ fails }) => fails) && (
        <>
          <h3>{sheetTexts.where}</h3>
          <ul>
            {measured
              .filter(({ fails }) => fails)
              .map(({ id, title, headline }) => (
                <li key={id}>
                  {title}: <b>{headline}</b>
                </li>
              ))}
          </ul>
        </>
      )}
      <ReportDrawings evaluated={evaluated} ids={ids} />
      <ReportNextDrive
        answers={counted}
        replacesDrive={decision?.replace.some(({ part }) => part === 'drive') ?? false}
      />
    </>
  );
}
