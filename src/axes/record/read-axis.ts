import { isObject } from '../../kernel/link/parse-json.ts';
import { failed, type Problem, type ReadProblemKind, type Result, succeeded } from '../../kernel/link/problem.ts';
import { type AxisRecord, axisFormat, axisSchema, axisVersion } from './axis-schema.ts';

/** An axis from data as it came from a file or the browser's storage. Never throws. */
export function readAxis(data: unknown): Result<AxisRecord, Problem<ReadProblemKind>> {
  if (!isObject(data) || data.format !== axisFormat) return failed('foreign');
  const { version } = data;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return failed('unknown-version');
  if (version > axisVersion) return failed('newer');
  const parsed = axisSchema.safeParse(data);
  if (parsed.success) return succeeded(parsed.data);
  return failed('does-not-fit', parsed.error.issues[0]?.path.map(String).join('.').slice(0, 120));
}
