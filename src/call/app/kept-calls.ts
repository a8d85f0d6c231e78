import { isObject, parseJson } from '../../kernel/link/parse-json.ts';
import type { Form } from '../../visit/steps/fields.ts';

/** A call as it is kept on the device. Times are ISO times with offset. */
export interface KeptCall {
  id: string;
  /** When it began. */
  at: string;
  changedAt: string;
  form: Form;
}

const prefix = 'fieldbook-call-';

/** Keeps a call. False if the browser refuses: the call is then in this window only. */
export function keepCall({ id, ...call }: KeptCall): boolean {
  try {
    localStorage.setItem(prefix + id, JSON.stringify(call));
    return true;
  } catch {
    return false;
  }
}

export function forgetCall(id: string): void {
  try {
    localStorage.removeItem(prefix + id);
  } catch {
    // Nothing is kept then.
  }
}

export function keptCall(id: string): KeptCall | undefined {
  try {
    return readCall(id, localStorage.getItem(prefix + id));
  } catch {
    return undefined;
  }
}

/** All calls of this device, the last changed first. */
export function keptCalls(): KeptCall[] {
  try {
    const ids = Object.keys(localStorage).flatMap((key) => (key.startsWith(prefix) ? [key.slice(prefix.length)] : []));
    const calls = ids.flatMap((id) => keptCall(id) ?? []);
    return calls.sort((a, b) => Date.parse(b.changedAt) - Date.parse(a.changedAt));
  } catch {
    return [];
  }
}

/** What does not fit is taken for nothing. */
function readCall(id: string, stored: string | null): KeptCall | undefined {
  const json = parseJson(stored ?? '');
  if (!json.ok || !isObject(json.value)) return undefined;
  const { at, changedAt, form } = json.value;
  if (typeof at !== 'string' || typeof changedAt !== 'string' || !isObject(form)) return undefined;
  const texts = Object.entries(form).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  return { id, at, changedAt, form: Object.fromEntries(texts) };
}
