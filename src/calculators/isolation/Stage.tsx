import type { ComponentChildren } from 'preact';
import { useOpening } from '../../ui/form/folded-parts.ts';

interface Props {
  number: number;
  title: string;
  /** The assessment asks for this stage now. */
  asked: boolean;
  /** Something has been typed in it. */
  used: boolean;
  children: ComponentChildren;
}

/** A later stage: opens when the assessment asks for it or it holds an entry; can be opened by hand, and stays open. */
export function Stage({ number, title, asked, used, children }: Props) {
  return (
    <details class="more stage" ref={useOpening(asked || used)} data-stage={number}>
      <summary>
        Stage {number}: {title}
        {asked && <span class="stage-asked"> asked for now</span>}
      </summary>
      {children}
    </details>
  );
}
