import type { ExportedFile } from '../record/export-visit.ts';

/** Hands a file to the browser to keep. It is made on the device; nothing is sent. */
export function download({ name, text }: ExportedFile): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Revoked at once, some browsers would not find it any more.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
