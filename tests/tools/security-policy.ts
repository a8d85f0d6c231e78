/**
 * The strictest policy that the site works under. The server of `npm start` and of the browser tests sends it, so
 * that an inline script, an inline style or a request to another host fails a test.
 * 'wasm-unsafe-eval' lets the search compile its WebAssembly; it allows no JavaScript evaluation.
 */
const securityPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  // A photograph of a visit is drawn from its bytes.
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join('; ');

/** Sent with every file; README.md lists the same for other hosts. */
export const securityHeaders: Record<string, string> = {
  'Content-Security-Policy': securityPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
};
