import type { FindingLine } from '../../kernel/form/calculator-form.ts';
import { severityWords } from '../../kernel/form/verdict-words.ts';

/** Findings in words, each with what it does to the verdict in a column of its own. */
export function Findings({ lines }: { lines: readonly FindingLine[] }) {
  if (lines.length === 0) return null;
  return (
    <ul class="findings signed">
      {lines.map(({ severity, text }) => (
        <li key={text} data-severity={severity}>
          <b>{severityWords[severity]}:</b> <span>{text}</span>
        </li>
      ))}
    </ul>
  );
}
