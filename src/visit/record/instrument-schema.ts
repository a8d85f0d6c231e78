import * as z from 'zod/mini';
import { text } from '../../kernel/link/schema-parts.ts';

/** An instrument, as the person notes it: what it is, which one, and what its data sheet states. All are free texts. */
export const instrumentSchema = z.strictObject({
  what: text,
  identification: text,
  /** Such as `2.1 % + 6 counts`. */
  accuracy: text,
  /** The lowest and the highest figure that it can show on the range that is used, such as `0.1 Ω`; absent: not noted. */
  smallest: z.optional(text),
  largest: z.optional(text),
  /** Of an insulation tester, such as `250 V, 500 V, 1000 V`; absent: not noted. */
  testVoltages: z.optional(text),
});

export type Instrument = z.output<typeof instrumentSchema>;
