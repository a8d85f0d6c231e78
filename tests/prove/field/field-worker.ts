import { parentPort, workerData } from 'node:worker_threads';
import { playField } from './play-field.ts';

/** Plays every `step`-th visit from number `from` up to `to`, and hands the outcomes back. */
const { from, to, step } = workerData as { from: number; to: number; step: number };
const outcomes = [];
for (let seed = from; seed < to; seed += step) outcomes.push(playField(seed));
parentPort?.postMessage(outcomes);
