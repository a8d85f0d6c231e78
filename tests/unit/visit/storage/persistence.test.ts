import { expect, test } from 'vitest';
import { askToPersist } from '../../../../src/visit/storage/persistence.ts';

const answers = (value: boolean) => () => Promise.resolve(value);
const throws = () => Promise.reject(new TypeError('not here'));

test.each([
  ['agreed', { persisted: answers(false), persist: answers(true) }, true],
  ['refused', { persisted: answers(false), persist: answers(false) }, false],
  ['agreed before, so that nobody is asked again', { persisted: answers(true), persist: throws }, true],
  ['throws', { persisted: throws, persist: throws }, undefined],
  ['a browser that can’t be asked', {}, undefined],
  ['a browser without any', undefined, undefined],
])('%s', async (_what, storage, answer) => {
  expect(await askToPersist(storage)).toBe(answer);
});
