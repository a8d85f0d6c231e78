import * as z from 'zod/mini';
import { limitValue } from '../../kernel/limits.ts';
import { fromBase64url, toBase64url } from '../../kernel/link/base64url.ts';
import { pack, unpack } from '../../kernel/link/pack.ts';
import { isObject, parseJson } from '../../kernel/link/parse-json.ts';
import { shareDictionary } from '../../kernel/link/share-dictionary.ts';
import { failed, type Problem, type ReadProblemKind, type Result, succeeded } from './problem.ts';
import { readVisit } from './read-visit.ts';
import { byField, code, longText } from './schema-parts.ts';
import type { VisitRecord } from './visit-schema.ts';
import { withoutSnapshots } from './without-snapshots.ts';

/** Of the packing, not of the visit inside. Raise it when the dictionary or the order of the bytes changes. */
const shareVersion = 1;

/** A pasted table is as long as a note. */
const calculatorSchema = z.strictObject({ calculator: code, form: byField(longText) });

/** What a link can carry: a filled calculator, or a visit without its snapshots. */
export type Shared =
  | { kind: 'calculator'; calculator: string; form: Record<string, string> }
  | { kind: 'visit'; visit: VisitRecord };

export type ShareResult<Value> = Result<Value, Problem<ReadProblemKind>>;

/**
 * The text for the address: `1.` and base64url of packed JSON. Of a visit it carries what was typed; what was computed
 * from it stays out, so that the link is short and can't bring a verdict that its readings do not give.
 */
export function shareText(shared: Shared): ShareResult<string> {
  const content =
    shared.kind === 'visit'
      ? { visit: withoutSnapshots(shared.visit) }
      : { calculator: shared.calculator, form: shared.form };
  const share = `${shareVersion}.${toBase64url(pack(JSON.stringify(content), shareDictionary))}`;
  // What a link could not be read back from is no link.
  const long = shared.kind === 'calculator' && Object.values(shared.form).some(isTooLong);
  return long || share.length > limitValue('share-link') ? failed('too-long-to-share') : succeeded(share);
}

const isTooLong = (value: string) => value.length > limitValue('record-notes');

/**
 * What a share text carries. `calculators` are the names that this site has. Damaged, cut off, foreign, hostile or
 * newer texts give a problem; nothing is stored, and nothing throws.
 */
export function readShare(share: string, calculators: readonly string[]): ShareResult<Shared> {
  if (share.length > limitValue('share-link')) return failed('too-large');
  const [, version, packed = ''] = /^(\d{1,6})\.(.+)$/.exec(share) ?? [];
  if (version === undefined) return failed('damaged');
  if (Number(version) !== shareVersion) return failed(Number(version) > shareVersion ? 'newer' : 'unknown-version');
  const bytes = fromBase64url(packed);
  if (bytes === undefined) return failed('damaged');
  const unpacked = unpack(bytes, shareDictionary, limitValue('record-file'));
  if (!unpacked.ok) return failed(unpacked.kind);
  const json = parseJson(unpacked.text);
  return json.ok ? contentOf(json.value, calculators) : json;
}

function contentOf(content: unknown, calculators: readonly string[]): ShareResult<Shared> {
  if (!isObject(content)) return failed('foreign');
  if ('visit' in content) {
    const read = readVisit(content.visit);
    return read.ok ? succeeded({ kind: 'visit', visit: withoutSnapshots(read.value) }) : read;
  }
  const parsed = calculatorSchema.safeParse(content);
  if (!parsed.success) return failed('foreign');
  const { calculator, form } = parsed.data;
  return calculators.includes(calculator)
    ? succeeded({ kind: 'calculator', calculator, form })
    : failed('unknown-calculator');
}
