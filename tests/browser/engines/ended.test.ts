import { expect, onTestFinished, test } from 'vitest';
import { findEngines, isFound } from '../../tools/engines.ts';
import { hasEnded } from '../support/ended.ts';
import { rawEngine } from './each-engine.ts';

// Vitest tries a test once more when its last message says that the browser has ended; see vitest.config.ts.

// Firefox has the driver of Chromium.
const engines = (await findEngines()).filter(isFound).filter(({ name }) => name !== 'Firefox');

test.each(engines)('$name: a browser that ends is named, and the next test has another one', async (found) => {
  const raw = rawEngine(found);
  onTestFinished(() => raw.close());
  const device = await raw.device();
  const page = await device.newPage();
  await device.kill();
  await expect(page.evaluate(() => 1)).rejects.toThrow();
  await expect(device.close()).rejects.toThrow(hasEnded);
  const next = await raw.device();
  expect(await (await next.newPage()).evaluate(() => 1 + 1)).toBe(2);
  await next.close();
});
