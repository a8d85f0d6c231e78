import type { Typed } from '../../kernel/form/field.ts';
import type { DecimalMark } from './read/number-cell.ts';
import type { Measured, Opened, Progress } from './trace-session.ts';

/** What the page asks of the worker; each with a number that comes back with the answer. */
export type Asked =
  | { kind: 'open'; id: number; file: Blob; name: string; mark?: DecimalMark }
  | { kind: 'measure'; id: number; typed: Typed };

export type Answered =
  | { kind: 'progress'; id: number; progress: Progress }
  | { kind: 'opened'; id: number; opened: Opened }
  | { kind: 'measured'; id: number; measured: Measured | undefined };
