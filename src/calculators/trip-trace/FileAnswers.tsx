import type { ChoiceField, TextField } from '../../kernel/form/field.ts';
import { Choices } from '../../ui/form/Choices.tsx';
import { ReadingInput } from '../../ui/form/ReadingInput.tsx';
import type { FieldsState } from '../../ui/form/use-fields.ts';
import * as fields from './fields.ts';
import { settingsProblems } from './read/file-problems.ts';
import type { SettingsProblems } from './read/settings.ts';
import type { OpenedFile } from './trace-session.ts';

interface Props {
  name: string;
  file: OpenedFile;
  problems: SettingsProblems;
  form: FieldsState;
}

/** Which column is what, and in which unit: proposed where the file says it, asked where it does not. */
export function FileAnswers({ name, file, problems, form }: Props) {
  const { typed } = form;
  const counted = typed.colTime === '' || typed.timeUnit === 'samples';
  const scaled = typed.currentUnit === 'percent' || typed.currentUnit === 'raw';
  const choices = (field: ChoiceField) => (
    <div>
      <Choices name={name} field={field} form={form} />
      <Problem id={field.id} problems={problems} />
    </div>
  );
  return (
    <fieldset class="trace-columns">
      <legend>The columns of the file</legend>
      <p class="hint">Proposed from names and figures. Look at the first values, and correct what is wrong.</p>
      <div class="trace-signals">
        {fields.columns.map((field) => (
          <ColumnChoice key={field.id} name={name} field={field} file={file} problems={problems} form={form} />
        ))}
      </div>
      {typed.colTime !== '' && choices(fields.timeUnit)}
      {counted && (
        <div>
          <ReadingInput name={name} field={fields.sampleTime} form={form} />
          <Problem id="sampleTime" problems={problems} />
        </div>
      )}
      {choices(fields.currentUnit)}
      {scaled && <TextEntry name={name} field={fields.currentScale} problems={problems} form={form} />}
      {typed.colBus !== '' && choices(fields.busUnit)}
      {typed.colSpeed !== '' && choices(fields.speedUnit)}
      <TextEntry name={name} field={fields.tripTime} problems={problems} form={form} />
    </fieldset>
  );
}

interface EntryProps {
  name: string;
  field: TextField;
  problems: SettingsProblems;
  form: FieldsState;
}

function ColumnChoice({ name, field, file, problems, form }: EntryProps & { file: OpenedFile }) {
  const id = `${name}-${field.id}`;
  const chosen = file.columns[Number(form.typed[field.id]) - 1];
  return (
    <div class={problems[field.id] ? 'field is-bad' : 'field'}>
      <label for={id}>{field.name}</label>
      <select
        id={id}
        name={field.id}
        aria-describedby={`${id}-echo ${id}-problem`}
        value={form.typed[field.id]}
        onChange={(event) => form.choose(field.id, event.currentTarget.value)}
      >
        <option value="">not in the file</option>
        {file.columns.map((column, index) => (
          <option key={index} value={String(index + 1)}>
            {index + 1}: {column.name || 'without a name'}
          </option>
        ))}
      </select>
      <p class="echo" id={`${id}-echo`}>
        {chosen && `= ${chosen.first} …${chosen.unit && ` [${chosen.unit}]`}`}
      </p>
      <Problem id={field.id} problems={problems} at={`${id}-problem`} />
    </div>
  );
}

function TextEntry({ name, field, problems, form }: EntryProps) {
  const id = `${name}-${field.id}`;
  return (
    <div class={problems[field.id] ? 'field is-bad' : 'field'}>
      <label for={id}>{field.name}</label>
      <p class="hint" id={`${id}-hint`}>
        {field.hint}
      </p>
      <input
        id={id}
        name={field.id}
        type="text"
        inputMode="decimal"
        aria-describedby={`${id}-hint ${id}-problem`}
        value={form.typed[field.id]}
        onInput={(event) => form.type(field.id, event.currentTarget.value)}
        onBlur={form.leave}
      />
      <Problem id={field.id} problems={problems} at={`${id}-problem`} />
    </div>
  );
}

function Problem({ id, problems, at }: { id: string; problems: SettingsProblems; at?: string }) {
  const problem = problems[id];
  return (
    <p class="error" id={at} role="alert">
      {problem && settingsProblems[problem]}
    </p>
  );
}
