/** What is wrong with a file as a whole, before any row is read. */
export type FileProblem =
  | 'empty'
  | 'spreadsheet'
  | 'compressed'
  | 'pdf'
  | 'picture'
  | 'web-page'
  | 'json'
  | 'binary'
  | 'too-large';

type FileKind = { ok: true; encoding: string } | { ok: false; problem: FileProblem };

/** How well-known files begin that people choose by mistake: their first bytes in hexadecimal digits, or their first letters. */
const firstBytes: [FileProblem, RegExp][] = [
  ['spreadsheet', /^d0cf11e0/],
  ['compressed', /^(504b0304|1f8b|377abcaf|52617221)/],
  ['picture', /^(89504e47|ffd8ff|474946|424d.{8}0000|52494646.{8}5745)/],
];
const firstLetters: [FileProblem, RegExp][] = [
  ['pdf', /^%PDF-/],
  ['web-page', /^\s*<(!doctype|html|table|\?xml|svg)/i],
  ['json', /^\s*(\{\s*("|\})|\[\s*[[{"\]])/],
];

/** A workbook is a zip archive that names one of these parts near its beginning. */
const partsOfWorkbook = /\[Content_Types\]|xl\/|mimetypeapplication\/vnd\.oasis/;

/**
 * Tells from the first bytes of a file whether it is text, and how its letters are coded: by its byte order mark, by zero
 * bytes at every other place (UTF-16 without a mark), as UTF-8, or else as an older Western text.
 */
export function fileKind(bytes: Uint8Array): FileKind {
  if (bytes.length === 0) return { ok: false, problem: 'empty' };
  const marked = encodingByMark(bytes);
  if (marked !== undefined) return { ok: true, encoding: marked };
  const start = latin(bytes.subarray(0, 4096));
  const found =
    firstBytes.find(([, pattern]) => pattern.test(hexadecimal(bytes.subarray(0, 16)))) ??
    firstLetters.find(([, pattern]) => pattern.test(start));
  if (found?.[0] === 'compressed' && partsOfWorkbook.test(start)) return { ok: false, problem: 'spreadsheet' };
  if (found !== undefined) return { ok: false, problem: found[0] };
  const wide = encodingByZeros(bytes.subarray(0, 4096));
  if (wide !== undefined) return { ok: true, encoding: wide };
  if (isBinary(bytes.subarray(0, 4096))) return { ok: false, problem: 'binary' };
  return { ok: true, encoding: isUtf8(bytes) ? 'utf-8' : 'windows-1252' };
}

function encodingByMark(bytes: Uint8Array): string | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  return bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 'utf-8' : undefined;
}

function encodingByZeros(bytes: Uint8Array): string | undefined {
  const zeros = [0, 0];
  for (const [place, byte] of bytes.entries()) if (byte === 0) zeros[place % 2] = (zeros[place % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = zeros;
  const most = bytes.length * 0.4;
  if (odd > most && even < odd / 20) return 'utf-16le';
  return even > most && odd < even / 20 ? 'utf-16be' : undefined;
}

function isBinary(bytes: Uint8Array): boolean {
  let odd = 0;
  for (const byte of bytes) {
    if (byte === 0) return true;
    if (byte < 9 || (byte > 13 && byte < 32)) odd++;
  }
  return odd > bytes.length / 100;
}

/** The last bytes are left out: a piece of a file may end within a letter. */
function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, Math.max(1, bytes.length - 3)));
    return true;
  } catch {
    // The cut may itself lie within a letter.
    return bytes.length > 8 && endsWithinLetter(bytes);
  }
}

function endsWithinLetter(bytes: Uint8Array): boolean {
  for (const cut of [4, 5, 6]) {
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, bytes.length - cut));
      return true;
    } catch {
      // Try one byte less.
    }
  }
  return false;
}

function latin(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
}

function hexadecimal(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
