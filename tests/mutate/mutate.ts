import { root } from '../tools/paths.ts';
import { isListed, readEquivalents, unneeded } from './equivalents.ts';
import { runTarget } from './run-target.ts';
import { targets } from './targets.ts';

/**
 * Changes rules and guide one place at a time and names the changes that no test notices. `npm run mutate -- [target]
 * [ends of file names]`: a calculator, `assessment`, `guide`, `guide-walk` or `steps`; all if none is named. Fails if a change goes unnoticed
 * that is not listed as equivalent, if less than 92 % are noticed, or if an entry of the list is no longer needed.
 */
const least = 92;
const [only, ...endings] = process.argv.slice(2);
if (only !== undefined && !targets.has(only)) throw new Error(`targets are ${[...targets.keys()].join(', ')}`);

process.chdir(root);
let met = true;
const table: string[] = [];
for (const [name, target] of targets) {
  if (only !== undefined && only !== name) continue;
  const tried = await runTarget(target, endings);
  const missed = tried.filter(({ noticed }) => !noticed);
  const listed = readEquivalents(name);
  const open = missed.filter((one) => !isListed(listed, one));
  for (const { file, at, line, from, to } of open) console.log(`\n${file}:${at}\n  ${line}\n- ${from}\n+ ${to}`);

  const stale = endings.length > 0 ? [] : unneeded(listed, [...missed, ...tried.filter(({ ranOut }) => ranOut)]);
  for (const text of stale) console.log(`\nno longer needed in the list: ${text}`);

  const share = (count: number, of: number) => `${((100 * count) / of).toFixed(1)} %`;
  for (const file of new Set(tried.map((one) => one.file))) {
    const ofFile = tried.filter((one) => one.file === file);
    const count = ofFile.filter(({ noticed }) => noticed).length;
    const unexplained = open.filter((one) => one.file === file).length;
    const numbers = [ofFile.length, share(count, ofFile.length), ofFile.length - count - unexplained, unexplained];
    table.push(`| ${name} | ${file.split('/').slice(-2).join('/')} | ${numbers.join(' | ')} |`);
  }
  const noticed = tried.length - missed.length;
  table.push(
    `| **${name}** |  | ${tried.length} | ${share(noticed, tried.length)} | ${missed.length - open.length} | ${open.length} |`,
  );
  if (open.length > 0 || stale.length > 0 || noticed < (tried.length * least) / 100) met = false;
}
console.log('\n| target | file | changes | noticed | equivalent | unnoticed |\n| --- | --- | --- | --- | --- | --- |');
console.log(table.join('\n'));
process.exitCode = met ? 0 : 1;
