/**
 * The strictest policy that the site works under. The server of `npm start` and of the browser tests sends it, so
 * that an inline script, an inline style or a request to another host fails a test.
 * 'wasm-unsafe-eval' lets the search compile its WebAssembly; it allows no JavaScript evaluation.
 */
export const securityPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join('; ');
