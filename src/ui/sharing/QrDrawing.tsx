import type { QrCode } from '../../kernel/link/qr-code.ts';

/** The code as one path, dark on white in every colour scheme: scanners need that. */
export function QrDrawing({ code: { rows } }: { code: QrCode }) {
  const size = rows.length;
  return (
    <svg class="qr-code" viewBox={`0 0 ${size} ${size}`} role="img" aria-label="QR code of the link">
      <rect class="light" width={size} height={size} />
      <path class="dark" d={darkPath(rows)} />
    </svg>
  );
}

/** Runs of dark modules, row by row: a tenth of the length of one square each. */
export function darkPath(rows: readonly boolean[][]): string {
  return rows
    .map((row, y) => {
      let path = '';
      for (let x = 0; x < row.length; x += 1) {
        if (!row[x]) continue;
        const start = x;
        while (row[x + 1]) x += 1;
        path += `M${start} ${y}h${x - start + 1}v1H${start}z`;
      }
      return path;
    })
    .join('');
}
