import { type CaseKey, decodeCase, encodeCase } from '../case/case-code.ts';
import { startTexts } from '../words/case.ts';
import { CaseScreen } from './CaseScreen.tsx';

/** The case of the code in the address, or a message if the code is invalid. */
export function PracticeCase({ asked, articles }: { asked: string; articles: readonly string[] }) {
  const key: CaseKey | undefined = decodeCase(asked);
  if (key !== undefined) return <CaseScreen caseKey={key} code={encodeCase(key)} articles={articles} />;
  return (
    <>
      <h1 tabIndex={-1}>{startTexts.title}</h1>
      <p role="alert">{startTexts.badCode}</p>
      <p>
        <a class="button" href={location.pathname}>
          To the start
        </a>
      </p>
    </>
  );
}
