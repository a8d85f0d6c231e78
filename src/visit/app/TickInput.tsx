interface Props {
  id: string;
  label: string;
  value: string;
  disabled?: boolean;
  onChoose: (value: 'yes' | '') => void;
}

/** Something that is confirmed. */
export function TickInput({ id, label, value, disabled, onChoose }: Props) {
  return (
    <div class="choices tick">
      <label for={id}>
        <input
          type="checkbox"
          id={id}
          checked={value === 'yes'}
          disabled={disabled}
          onChange={(event) => onChoose(event.currentTarget.checked ? 'yes' : '')}
        />
        <span>{label}</span>
      </label>
    </div>
  );
}
