import type { JSX } from 'preact';
import type { Typed } from '../../kernel/form/field.ts';
import { href } from '../../ui/href.ts';

interface Props {
  /** The page that opens: `/calculators/isolation/`. */
  page: string;
  /** The calculator whose fields the entries are for. */
  calculator: string;
  /** What it is filled with, by the ids of its fields; without entries it is a plain link. */
  form: Typed;
  children: JSX.Element | string;
}

/**
 * A link that takes entries along in the address, as a shared link does: the page that opens shows them and asks before
 * it takes them. What packs them is loaded only when the link is used.
 */
export function OpenFilled({ page, calculator, form, children }: Props) {
  const plain = href(page);
  const entries = Object.fromEntries(Object.entries(form).filter(([, value]) => value.trim() !== ''));
  const open = async (event: MouseEvent) => {
    if (Object.keys(entries).length === 0 || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    location.assign(await filled(plain, calculator, entries));
  };
  return (
    <a class="button" href={plain} onClick={(event) => void open(event)}>
      {children}
    </a>
  );
}

/** The address with the entries; without them if they can't be packed. */
async function filled(plain: string, calculator: string, form: Typed): Promise<string> {
  try {
    const { shareEntries } = await import('./calculator-link.ts');
    const share = shareEntries({ calculator, form });
    return share.ok ? `${plain}#share=${share.value}` : plain;
  } catch {
    return plain;
  }
}
