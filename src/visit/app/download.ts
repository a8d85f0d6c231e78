import type { ExportedFile } from '../record/export-visit.ts';

/** Saves a file through the browser's download. It is made on the device; nothing is sent. */
export function download({ name, text }: ExportedFile): void {
  const address = URL.createObjectURL(
    new Blob([text], { type: name.endsWith('.csv') ? 'text/csv' : 'application/json' }),
  );
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers lose the file if the address is revoked at once.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
