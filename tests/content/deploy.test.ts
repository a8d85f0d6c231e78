import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../tools/paths.ts';
import { securityHeaders } from '../tools/security-policy.ts';

test('the headers that README.md gives to hosts are those that the site is tested under', () => {
  const page = readFileSync(join(root, 'README.md'), 'utf8');
  for (const [name, value] of Object.entries(securityHeaders)) expect(page).toContain(`${name}: ${value}\n`);
});
