import type { DecisionKind } from '../../../../../src/visit/guide/decision.ts';
import type { OpenItem } from '../../../../../src/visit/guide/open-items.ts';
import type { Given } from '../support/visit.ts';

/** A visit that ends, and the decision that it must end with. */
export interface Leaf {
  what: string;
  visit: Given[];
  decision: DecisionKind;
  /** Part and its proofs. */
  replace?: Record<string, string[]>;
  /** Part and what speaks against it without proof. */
  suspect?: Record<string, string[]>;
  good?: string[];
  open?: OpenItem[];
  why: string;
}
