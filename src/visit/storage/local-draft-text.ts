/** Apart from the draft's schema, which the front page does not need. */
export const draftKey = (id: string) => `fieldbook-draft-${id}`;

/** The draft of a visit in `localStorage`, as JSON reads it; undefined if there is none or it can't be read. */
export function localDraftText(id: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(draftKey(id)) ?? 'null') ?? undefined;
  } catch {
    return undefined;
  }
}
