/** What can be noted about an axis besides its name; each is free text. The order is that of the form. */
export const noteIds = [
  'plant',
  'drive',
  'motor',
  'motorModel',
  'cableMetres',
  'cableSection',
  'cableMaterial',
  'brake',
  'label',
] as const;
export type NoteId = (typeof noteIds)[number];

/**
 * All texts of a record that are merged one by one. `mergedInto`: id of the axis that this one is another spelling of.
 * `removed`: `yes` if a person took it off the list; visits with its name bring it back.
 */
export const fieldIds = [...noteIds, 'mergedInto', 'removed'] as const;
export type FieldId = (typeof fieldIds)[number];
