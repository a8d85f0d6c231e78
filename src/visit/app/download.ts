const types: Record<string, string> = { csv: 'text/csv', json: 'application/json', zip: 'application/zip' };

interface MadeFile {
  /** With the ending that tells its type. */
  name: string;
  text: string | Uint8Array<ArrayBuffer>;
}

/** Saves a file through the browser's download. It is made on the device; nothing is sent. */
export function download({ name, text }: MadeFile): void {
  const type = types[name.split('.').pop() ?? ''] ?? 'application/octet-stream';
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers lose the file if the address is revoked at once.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
