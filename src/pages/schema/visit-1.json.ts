import type { APIRoute } from 'astro';
import { visitJsonSchema } from '../../visit/record/json-schema.ts';

/** The documented form of an exported visit, for programs of others. */
export const GET: APIRoute = () =>
  new Response(JSON.stringify(visitJsonSchema(), null, 2), {
    headers: { 'content-type': 'application/schema+json; charset=utf-8' },
  });
