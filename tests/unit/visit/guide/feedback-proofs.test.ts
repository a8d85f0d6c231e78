import { describe, expect, it } from 'vitest';
import { provenBad } from '../../../../src/visit/guide/proofs.ts';
import { suspected } from '../../../../src/visit/guide/suspicions.ts';
import { bend, retry, seen, trips } from './support/answers.ts';
import { type Given, visitOf } from './support/visit.ts';

const proven = (history: Given[]) => provenBad(visitOf(history)).map(({ part, proofs }) => [part, ...proofs].join(' '));
const suspect = (history: Given[]) =>
  suspected(visitOf(history)).map(({ part, reasons }) => [part, ...reasons].join(' '));
const given = (): Given[] => [trips('control-off'), seen()];

const off = (result: 'trips' | 'no-trip') => retry('retry-feedback-off', result);
const end = (result: 'trips' | 'no-trip') => retry('retry-device-end', result);
const on = (result: 'trips' | 'no-trip') => retry('retry-feedback-on', result);

describe('the feedback', () => {
  const gone = 'gone-without-feedback';
  const rows: [what: string, history: Given[], proven: string[], suspect: string[]][] = [
    ['gone without it', [off('no-trip')], [], [`feedback-cable ${gone}`, `feedback-device ${gone}`]],
    [
      'gone, and back with the cable',
      [off('no-trip'), end('trips')],
      ['feedback-cable trip-follows-feedback-cable'],
      [],
    ],
    [
      'gone, and back with the cable now and then',
      [off('no-trip'), retry('retry-device-end', 'trips', { tries: 3, trips: 1 })],
      [],
      [`feedback-cable ${gone} follows-feedback-cable`],
    ],
    [
      'gone in too few tries, and back with the cable',
      [retry('retry-feedback-off', 'no-trip', { tries: 1 }), end('trips')],
      [],
      [`feedback-cable ${gone} follows-feedback-cable`],
    ],
    ['gone without the device', [off('no-trip'), end('no-trip')], [], [`feedback-device ${gone} gone-without-device`]],
    [
      'gone without the device, and back with it',
      [off('no-trip'), end('no-trip'), on('trips')],
      ['feedback-device trip-gone-without-device'],
      [],
    ],
    [
      'gone without the device in too few tries, and back with it',
      [off('no-trip'), retry('retry-device-end', 'no-trip', { tries: 1 }), on('trips')],
      [],
      [`feedback-device ${gone} gone-without-device`],
    ],
    ['gone without the device, and not back: a contact', [off('no-trip'), end('no-trip'), on('no-trip')], [], []],
    ['seen chafed', [seen({ feedbackCable: 'chafed' })], [], ['feedback-cable feedback-cable-damaged']],
    [
      'seen wet, which dries',
      [seen({ feedbackCable: 'wet' }), off('no-trip')],
      [],
      [`feedback-cable ${gone}`, `feedback-device ${gone}`],
    ],
    [
      'seen chafed, and gone without it',
      [seen({ feedbackCable: 'chafed' }), off('no-trip')],
      ['feedback-cable feedback-cable-damaged'],
      [],
    ],
    [
      'seen burnt, and gone without it in too few tries',
      [seen({ feedbackCable: 'burnt' }), retry('retry-feedback-off', 'no-trip', { tries: 2 })],
      [],
      [`feedback-cable feedback-cable-damaged ${gone}`, `feedback-device ${gone}`],
    ],
    [
      'seen chafed, and gone with the cable on: the device',
      [seen({ feedbackCable: 'chafed' }), off('no-trip'), end('no-trip')],
      [],
      ['feedback-cable feedback-cable-damaged', `feedback-device ${gone} gone-without-device`],
    ],
    [
      'seen chafed, and a contact',
      [seen({ feedbackCable: 'chafed' }), off('no-trip'), end('no-trip'), on('no-trip')],
      [],
      ['feedback-cable feedback-cable-damaged'],
    ],
    [
      'bent once, and a contact',
      [off('no-trip'), end('no-trip'), on('no-trip'), bend('opens', false, 'feedback')],
      [],
      ['feedback-cable bent-once'],
    ],
  ];
  it.each(rows)('%s', (_, history, bad, doubted) => {
    expect(proven([...given(), ...history])).toEqual(bad);
    expect(suspect([...given(), ...history])).toEqual(doubted);
  });
});
