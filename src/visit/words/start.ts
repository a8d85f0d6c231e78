/** What stands at the head of the visits, in the page itself and again when its script has come. */
export const visitsLead =
  'A visit leads from the trip to the parts decision, step by step. It says what to do next, judges what you measure, and keeps the record.';
