/** The Debian package of each shared library that a headless Chromium may want; names of Debian 12. */
const packages: [library: RegExp, debianPackage: string][] = [
  [/^lib(nss3|nssutil3|smime3|ssl3|softokn3)\.so/, 'libnss3'],
  [/^lib(nspr4|plc4|plds4)\.so/, 'libnspr4'],
  [/^libexpat\.so/, 'libexpat1'],
  [/^lib(glib|gobject|gio)-2\.0\.so/, 'libglib2.0-0'],
  [/^libdbus-1\.so/, 'libdbus-1-3'],
  [/^libatk-1\.0\.so/, 'libatk1.0-0'],
  [/^libatk-bridge-2\.0\.so/, 'libatk-bridge2.0-0'],
  [/^libatspi\.so/, 'libatspi2.0-0'],
  [/^libcups\.so/, 'libcups2'],
  [/^libdrm\.so/, 'libdrm2'],
  [/^libgbm\.so/, 'libgbm1'],
  [/^libasound\.so/, 'libasound2'],
  [/^libxkbcommon\.so/, 'libxkbcommon0'],
  [/^libX11\.so/, 'libx11-6'],
  [/^libXcomposite\.so/, 'libxcomposite1'],
  [/^libXdamage\.so/, 'libxdamage1'],
  [/^libXext\.so/, 'libxext6'],
  [/^libXfixes\.so/, 'libxfixes3'],
  [/^libXrandr\.so/, 'libxrandr2'],
  [/^libxcb\.so/, 'libxcb1'],
  [/^libpango-1\.0\.so/, 'libpango-1.0-0'],
  [/^libcairo\.so/, 'libcairo2'],
  [/^libudev\.so/, 'libudev1'],
];

/** Renamed in Debian 13, when times became 64 bits wide. */
const renamedIn13 = new Set([
  'libglib2.0-0',
  'libatk1.0-0',
  'libatk-bridge2.0-0',
  'libatspi2.0-0',
  'libcups2',
  'libasound2',
]);

/** The libraries that `ldd` reports as not found, each once. */
export function missingLibraries(lddOutput: string): string[] {
  return [...new Set([...lddOutput.matchAll(/^\s*(\S+) => not found/gm)].map((m) => m[1] ?? ''))];
}

/** The packages to install for these libraries, and the libraries that no package is known for. */
export function packagesFor(libraries: string[], debian: number): { packages: string[]; unknown: string[] } {
  const found = libraries.map((library) => packages.find(([pattern]) => pattern.test(library))?.[1]);
  const names = found.filter((name) => name !== undefined);
  const named = names.map((name) => (debian >= 13 && renamedIn13.has(name) ? `${name}t64` : name));
  return { packages: [...new Set(named)], unknown: libraries.filter((_, i) => found[i] === undefined) };
}
