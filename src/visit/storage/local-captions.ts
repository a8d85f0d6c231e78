import { isObject } from '../../kernel/link/parse-json.ts';

/** A caption that was typed and may not be stored yet, and when. */
export interface TypedCaption {
  caption: string;
  changedAt: string;
}

const key = (visit: string) => `fieldbook-captions-${visit}`;

/** The captions of a visit's photographs in `localStorage`, by the id of the photograph. */
export function localCaptions(visit: string): Record<string, TypedCaption> {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(key(visit)) ?? '{}');
    if (!isObject(stored)) return {};
    return Object.fromEntries(
      Object.entries(stored).flatMap(([id, one]) =>
        isObject(one) && typeof one.caption === 'string' && !Number.isNaN(Date.parse(String(one.changedAt)))
          ? [[id, { caption: one.caption, changedAt: String(one.changedAt) }]]
          : [],
      ),
    );
  } catch {
    return {};
  }
}

/** Written before it returns, so that a key pressed just before the tab closes is not lost. Undefined removes it. */
export function keepLocalCaption(visit: string, id: string, typed: TypedCaption | undefined): void {
  const { [id]: _before, ...others } = localCaptions(visit);
  const captions = typed === undefined ? others : { ...others, [id]: typed };
  try {
    if (Object.keys(captions).length === 0) localStorage.removeItem(key(visit));
    else localStorage.setItem(key(visit), JSON.stringify(captions));
  } catch {
    // Refused or full: the caption is stored when the person pauses.
  }
}

export function forgetLocalCaptions(visit: string): void {
  for (const id of Object.keys(localCaptions(visit))) keepLocalCaption(visit, id, undefined);
}
