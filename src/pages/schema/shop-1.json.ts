import type { APIRoute } from 'astro';
import { shopJsonSchema } from '../../shop/file/json-schema.ts';

/** The documented format of the files that tablets exchange, for other programs. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(shopJsonSchema(), null, 2), {
    headers: { 'content-type': 'application/schema+json; charset=utf-8' },
  });
