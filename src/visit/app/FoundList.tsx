import type { ComponentChildren } from 'preact';

interface Props {
  heading: string;
  severity: 'fail' | 'pass' | 'undecided' | 'caution';
  items: readonly { key: string; text: ComponentChildren }[];
}

/** A heading with its findings; nothing if there are none. */
export function FoundList({ heading, severity, items }: Props) {
  if (items.length === 0) return null;
  return (
    <>
      <h3>{heading}</h3>
      <ul class="findings">
        {items.map(({ key, text }) => (
          <li key={key} data-severity={severity}>
            {text}
          </li>
        ))}
      </ul>
    </>
  );
}
