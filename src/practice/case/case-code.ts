import { crc32 } from '../../kernel/link/crc32.ts';
import { oneOf, type Random, seeded } from '../../kernel/random.ts';
import { allFaultIds, faultIds } from '../simulator/faulted-axis.ts';
import { singleFaults } from '../simulator/faults.ts';
import { drawCause } from '../world/field-mix.ts';
import { inField } from './draw-machine.ts';

/** Determines a case completely: the same three values give the same axis, instruments and readings. */
export interface CaseKey {
  /** Id of a fault; with `field-` before it, on an axis of the field. */
  fault: string;
  /** 0 to 32767. */
  seed: number;
  /** Temperature of the winding at the start, in °C: one of `windingTemperatures`. */
  windingCelsius: number;
}

/** 5 to 80 °C, in 32 steps. */
export const windingTemperatures: readonly number[] = Array.from({ length: 32 }, (_, step) =>
  Math.round(5 + (step * 75) / 31),
);

export const seeds = 2 ** 15;

/** Every fault that a code can name. */
export const caseFaults: readonly string[] = [...faultIds, ...allFaultIds.map(inField)];

/** `clear`: one bad part that the usual measurements name; `all`: every fault of the tidy world; `field`: the mix. */
export type Level = 'clear' | 'all' | 'field';

const clearFaults = singleFaults
  .filter(({ bad, hidden }) => bad.length === 1 && hidden === undefined)
  .map(({ id }) => id);

/** Digits and letters, five bits each; I, L, O and U are left out because they are misread. */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * A fault is coded as 15 bits of its id's checksum, so that printed codes stay valid when faults are added.
 * A test checks that no two ids share a mark.
 */
export function faultMark(id: string): number {
  return crc32(new TextEncoder().encode(id)) % seeds;
}

/**
 * Nine characters, `XXX-XXX-XXX`: seed, fault, temperature and two check characters. Fault and temperature are scrambled
 * by the seed, so that two codes of one fault do not look alike. This is no protection against somebody who decodes it.
 */
export function encodeCase({ fault, seed, windingCelsius }: CaseKey): string {
  const [maskFault, maskStep] = masks(seed);
  const step = windingTemperatures.indexOf(windingCelsius);
  const body = characters(seed, 3) + characters(faultMark(fault) ^ maskFault, 3) + characters(step ^ maskStep, 1);
  return grouped(body + check(body));
}

/** The case of a code; small letters, missing hyphens and O for 0 are accepted. Undefined for an invalid code. */
export function decodeCase(typed: string): CaseKey | undefined {
  const code = typed
    .toUpperCase()
    .replaceAll(/[^0-9A-Z]/g, '')
    .replaceAll('O', '0')
    .replaceAll(/[IL]/g, '1');
  const values = [...code].map((character) => alphabet.indexOf(character));
  if (code.length !== 9 || values.includes(-1) || check(code.slice(0, 7)) !== code.slice(7)) return undefined;
  const number = (from: number, to: number) => values.slice(from, to).reduce((sum, value) => sum * 32 + value, 0);
  const seed = number(0, 3);
  const [maskFault, maskStep] = masks(seed);
  const fault = caseFaults.find((id) => faultMark(id) === (number(3, 6) ^ maskFault));
  const windingCelsius = windingTemperatures[number(6, 7) ^ maskStep];
  return fault === undefined || windingCelsius === undefined ? undefined : { fault, seed, windingCelsius };
}

/** A fault of this level: all equally likely, or in the field by their weights. */
export function drawCase(random: Random, level: Level = 'all'): CaseKey {
  const below = (count: number) => Math.floor(random() * count);
  return {
    fault: drawFault(random, level),
    seed: below(seeds),
    windingCelsius: windingTemperatures[below(windingTemperatures.length)] as number,
  };
}

function drawFault(random: Random, level: Level): string {
  if (level === 'field') return inField(drawCause(random).fault);
  return oneOf(random, level === 'clear' ? clearFaults : faultIds);
}

/** The code of a case drawn at random. */
export function newCaseCode(level: Level): string {
  return encodeCase(drawCase(Math.random, level));
}

/** A typed code in its usual spelling; undefined for an invalid code. */
export function normalCode(typed: string): string | undefined {
  const key = decodeCase(typed);
  return key && encodeCase(key);
}

function masks(seed: number): [fault: number, step: number] {
  const random = seeded(seed);
  return [Math.floor(random() * seeds), Math.floor(random() * windingTemperatures.length)];
}

function characters(value: number, length: number): string {
  return Array.from({ length }, (_, place) => alphabet[(value >> (5 * (length - 1 - place))) & 31]).join('');
}

function check(body: string): string {
  return characters(crc32(new TextEncoder().encode(body)) % 1024, 2);
}

const grouped = (code: string) => code.replace(/^(...)(...)(...)$/, '$1-$2-$3');
