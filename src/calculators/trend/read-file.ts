import { limitValue } from '../../kernel/limits.ts';

/** The text of a file, or why it is refused. Spreadsheets still write UTF-16 and older Western files. */
export async function readTableFile(file: File): Promise<{ text: string } | { refused: string }> {
  if (file.size > limitValue('record-file')) {
    return { refused: 'This file is too large for a list of readings. Check that you chose the right one.' };
  }
  try {
    return { text: decode(new Uint8Array(await file.arrayBuffer())) };
  } catch {
    return { refused: 'The file can’t be read. Copy it to this device first, then choose it again.' };
  }
}

export function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
