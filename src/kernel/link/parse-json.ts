import { failed, type Problem, type Result, succeeded } from './problem.ts';

/** JSON from outside. A key that would reach an object's prototype counts as damage of the whole text; never throws. */
export function parseJson(text: string): Result<unknown, Problem<'damaged'>> {
  try {
    return succeeded(
      JSON.parse(text, (key, value) => {
        if (key === '__proto__') throw new SyntaxError('forbidden key');
        return value;
      }),
    );
  } catch {
    // Nesting that overflows the parser's stack is caught here too.
    return failed('damaged');
  }
}

export type JsonObject = Record<string, unknown>;

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
