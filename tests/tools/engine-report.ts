import { type EngineName, engineNames, type FoundEngine, findEngines, isFound, versionOf } from './engines.ts';
import type { Report } from './report.ts';

interface EngineReport {
  /** E.g. `Browsers: Chromium 156.0, Firefox 140.3; not found: WebKitGTK (no Xvfb)`. */
  line: string;
  /** A line for each required engine in which no test ran. */
  wanting: string[];
}

/** The engines whose group has a test that ran, passed or failed. */
export function enginesThatRan(report: Report | undefined): EngineName[] {
  const tests = report?.testResults.flatMap(({ assertionResults }) => assertionResults) ?? [];
  const groups = new Set(
    tests
      .filter(({ status }) => status === 'passed' || status === 'failed')
      .map(({ ancestorTitles: [group] }) => group),
  );
  return engineNames.filter((name) => groups.has(name));
}

/**
 * The engines in which the browser tests ran, by their own report. FIELDBOOK_ENGINES names the required engines, as
 * .ci/run does with those that it has installed: `Chromium Firefox`.
 */
export async function reportEngines(
  report: Report | undefined,
  wanted = process.env.FIELDBOOK_ENGINES ?? '',
): Promise<EngineReport> {
  const ran = enginesThatRan(report);
  const engines = await findEngines();
  const told = await Promise.all(
    engines
      .filter(isFound)
      .filter(({ name }) => ran.includes(name))
      .map(withVersion),
  );
  const rest = engines.filter(({ name }) => !ran.includes(name));
  const absent = rest.flatMap((engine) => (isFound(engine) ? [] : [`${engine.name} (${engine.missing})`]));
  const idle = rest.filter(isFound).map(({ name }) => name);
  return {
    line: [
      `Browsers: ${told.join(', ') || '–'}`,
      ...(idle.length > 0 ? [`installed, but no test ran in: ${idle.join(', ')}`] : []),
      `not found: ${absent.join(', ') || '–'}`,
    ].join('; '),
    wanting: wanted
      .split(/\s+/)
      .filter((name) => name !== '' && !ran.some((one) => one === name))
      .map((name) => `no test ran in ${name}, which was installed for the tests`),
  };
}

const withVersion = async (engine: FoundEngine) => `${engine.name} ${await versionOf(engine)}`;
