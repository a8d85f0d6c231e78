import { expect, test } from 'vitest';
import { missingLibraries, packagesFor } from '../../tools/debian-packages.ts';

// The form that ldd of glibc prints, here for a browser on a machine without its libraries.
const lddOutput = `
	linux-vdso.so.1 (0x00007fff)
	libnspr4.so => not found
	libnss3.so => not found
	libnssutil3.so => not found
	libm.so.6 => /lib/x86_64-linux-gnu/libm.so.6 (0x00007f00)
	libnss3.so => not found
	libasound.so.2 => not found
	libstrange.so.9 => not found
`;

test('each missing library is named once', () => {
  expect(missingLibraries(lddOutput)).toEqual([
    'libnspr4.so',
    'libnss3.so',
    'libnssutil3.so',
    'libasound.so.2',
    'libstrange.so.9',
  ]);
});

test('nothing is missing where all are found', () => {
  expect(missingLibraries('\tlibm.so.6 => /lib/libm.so.6 (0x00007f00)\n')).toEqual([]);
});

test('Debian 12 names', () => {
  expect(packagesFor(missingLibraries(lddOutput), 12)).toEqual({
    packages: ['libnspr4', 'libnss3', 'libasound2'],
    unknown: ['libstrange.so.9'],
  });
});

test('Debian 13 renamed some packages and kept others', () => {
  expect(packagesFor(['libnss3.so', 'libasound.so.2', 'libcups.so.2'], 13).packages).toEqual([
    'libnss3',
    'libasound2t64',
    'libcups2t64',
  ]);
});
