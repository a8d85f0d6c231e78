import { spawnSync } from 'node:child_process';
import { root } from './paths.ts';

// npm run audit: known weaknesses of the packages, from the registry. Passes if the registry does not answer.

interface Report {
  metadata?: { vulnerabilities: Record<string, number> };
  vulnerabilities?: Record<string, { severity: string }>;
}

const { stdout } = spawnSync('npm', ['audit', '--json'], { cwd: root, encoding: 'utf8', timeout: 60_000 });
const { metadata, vulnerabilities = {} } = parsed(stdout);

if (metadata === undefined) {
  console.log('The registry does not answer questions about weaknesses, so nothing is known.');
} else {
  const grave = Object.entries(vulnerabilities).filter(([, { severity }]) => /high|critical/.test(severity));
  console.log(`Known weaknesses: ${JSON.stringify(metadata.vulnerabilities)}`);
  for (const [name, { severity }] of grave) console.log(`${severity}: ${name}`);
  process.exitCode = grave.length === 0 ? 0 : 1;
}

function parsed(text: string): Report {
  try {
    return JSON.parse(text);
  } catch {
    return {};
  }
}
