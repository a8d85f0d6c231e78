import { limitValue } from '../limits.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { pack, unpack } from './pack.ts';
import { isObject, type JsonObject, parseJson } from './parse-json.ts';
import { failed, type Problem, type ReadProblemKind, type Result, succeeded } from './problem.ts';
import { shareDictionary } from './share-dictionary.ts';

/** Version of the packing, not of the content. Raise it when the dictionary or the order of the bytes changes. */
const shareVersion = 1;

export type ShareResult<Value> = Result<Value, Problem<ReadProblemKind>>;

/** The text for the address: `1.` and base64url of packed JSON. */
export function packShare(content: JsonObject): ShareResult<string> {
  const share = `${shareVersion}.${toBase64url(pack(JSON.stringify(content), shareDictionary))}`;
  return share.length > limitValue('share-link') ? failed('too-long-to-share') : succeeded(share);
}

/**
 * The content of a share text, checked only to be an object. Damaged, truncated, unrelated, hostile or newer texts give
 * a problem; nothing is stored, and it never throws.
 */
export function unpackShare(share: string): ShareResult<JsonObject> {
  if (share.length > limitValue('share-link')) return failed('too-large');
  const [, version, packed = ''] = /^(\d{1,6})\.(.+)$/.exec(share) ?? [];
  if (version === undefined) return failed('damaged');
  if (Number(version) !== shareVersion) return failed(Number(version) > shareVersion ? 'newer' : 'unknown-version');
  const bytes = fromBase64url(packed);
  if (bytes === undefined) return failed('damaged');
  const unpacked = unpack(bytes, shareDictionary, limitValue('record-file'));
  if (!unpacked.ok) return failed(unpacked.kind);
  const json = parseJson(unpacked.text);
  if (!json.ok) return json;
  return isObject(json.value) ? succeeded(json.value) : failed('foreign');
}
