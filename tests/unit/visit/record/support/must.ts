/** The value of a result that must be good. */
export function must<T>(result: { ok: true; value: T } | { ok: false; problem: { message: string } }): T {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}
