import type { APIRoute } from 'astro';
import { visitJsonSchema } from '../../visit/record/json-schema.ts';

/** The documented format of an exported visit, for other programs. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(visitJsonSchema(), null, 2), {
    headers: { 'content-type': 'application/schema+json; charset=utf-8' },
  });
