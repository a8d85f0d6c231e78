interface Props {
  id: string;
  label: string;
  hint?: string | undefined;
  value: string;
  long?: boolean | undefined;
  digits?: boolean | undefined;
  onInput: (value: string) => void;
  onLeave: () => void;
}

/** A field for words or a plain number, in the looks of the reading fields. */
export function TextInput({ id, label, hint, value, long, digits, onInput, onLeave }: Props) {
  const shared = {
    id,
    value,
    ...(hint !== undefined && { 'aria-describedby': `${id}-hint` }),
    onInput: (event: { currentTarget: { value: string } }) => onInput(event.currentTarget.value),
    onBlur: onLeave,
  };
  return (
    <div class="field words">
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {long ? (
        // Browsers are content with its first line in view.
        <textarea {...shared} rows={3} onFocus={(event) => event.currentTarget.scrollIntoView({ block: 'nearest' })} />
      ) : (
        <input {...shared} type="text" inputMode={digits ? 'numeric' : 'text'} enterKeyHint="next" />
      )}
    </div>
  );
}
