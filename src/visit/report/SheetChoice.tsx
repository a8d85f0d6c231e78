import { type Sheet, sheetNames, sheets, sheetTexts } from '../words/sheets.ts';

interface Props {
  chosen: readonly Sheet[];
  onChoose: (chosen: Sheet[]) => void;
}

/** What is shown and printed of the report. */
export function SheetChoice({ chosen, onChoose }: Props) {
  return (
    <fieldset class="sheet-choice">
      <legend>{sheetTexts.choose}</legend>
      <div class="choices tick">
        {sheets.map((sheet) => (
          <label key={sheet} for={`print-${sheet}`}>
            <input
              type="checkbox"
              id={`print-${sheet}`}
              checked={chosen.includes(sheet)}
              onChange={({ currentTarget: { checked } }) =>
                onChoose(sheets.filter((one) => (one === sheet ? checked : chosen.includes(one))))
              }
            />
            <span>{sheetNames[sheet]}</span>
          </label>
        ))}
      </div>
      {chosen.length === 0 && <p role="status">{sheetTexts.chooseOne}</p>}
    </fieldset>
  );
}
