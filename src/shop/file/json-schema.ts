import * as z from 'zod/mini';
import { sharedSchema, shopSchema } from './shop-schema.ts';

/** The published JSON Schema of the files of a shop (draft 2020-12). Made at build time and not part of any page. */
export function shopJsonSchema(): Record<string, unknown> {
  return {
    title: 'Files that the tablets of a shop exchange, version 1',
    description:
      'One state of a visit as a file of the shared folder, or all of a device in one file. A state is newer than another ' +
      'if none of its numbers in versions is smaller. If each has a larger one, both visits are kept. A deleted visit ' +
      'leaves a state without a visit.',
    ...z.toJSONSchema(z.union([sharedSchema, shopSchema])),
  };
}
