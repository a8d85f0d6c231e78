import { type ExportedQuestion, type Key, verdictChoices } from './exported-question.ts';
import { element, type XmlElement } from './xml.ts';

/** Namespace and schema of items and tests, IMS QTI 3.0.1. */
export const assessmentAttributes = {
  xmlns: 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0',
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation':
    'http://www.imsglobal.org/xsd/imsqtiasi_v3p0 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0p1_v1p0.xsd',
};

const matchCorrect = 'https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct';

/** Percent by which a figure may differ from the computed one: who rounds halfway is right all the same. */
const tolerancePercent = 2;

/**
 * A question as an item. A verdict is chosen and a figure typed, which the system scores; the reason is written in any
 * case, and a person reads it beside the answer of this site, which only scorers see.
 */
export function qtiItem({ id, title, question, answer, key }: ExportedQuestion): XmlElement {
  const scored = key === undefined ? { 'external-scored': 'human' } : {};
  const attributes = { identifier: id, title, adaptive: 'false', 'time-dependent': 'false', 'xml:lang': 'en' };
  return element(
    'qti-assessment-item',
    { ...assessmentAttributes, ...attributes },
    ...(key === undefined ? [] : [declaredResponse(key)]),
    element('qti-response-declaration', { identifier: 'REASON', cardinality: 'single', 'base-type': 'string' }),
    element(
      'qti-outcome-declaration',
      { identifier: 'SCORE', cardinality: 'single', 'base-type': 'float', 'normal-maximum': '1', ...scored },
      element('qti-default-value', {}, element('qti-value', {}, '0')),
    ),
    element(
      'qti-item-body',
      {},
      element('p', {}, question),
      ...(key === undefined ? [] : [interaction(key)]),
      element(
        'qti-extended-text-interaction',
        { 'response-identifier': 'REASON' },
        element('qti-prompt', {}, key === undefined ? 'Your answer, with its reason' : 'Your reason'),
      ),
      element(
        'qti-rubric-block',
        { view: 'scorer', use: 'scoring' },
        element('qti-content-body', {}, ...answer.map((paragraph) => element('p', {}, paragraph))),
      ),
    ),
    ...(key === undefined ? [] : [processing(key)]),
  );
}

function declaredResponse(key: Key): XmlElement {
  return element(
    'qti-response-declaration',
    { identifier: 'RESPONSE', cardinality: 'single', 'base-type': key.kind === 'choice' ? 'identifier' : 'float' },
    element('qti-correct-response', {}, element('qti-value', {}, String(key.value))),
  );
}

function interaction(key: Key): XmlElement {
  if (key.kind === 'figure') {
    const entry = element('qti-text-entry-interaction', { 'response-identifier': 'RESPONSE', 'expected-length': '8' });
    return element('p', {}, 'The figure: ', entry, ` ${key.unit}`);
  }
  return element(
    'qti-choice-interaction',
    { 'response-identifier': 'RESPONSE', 'max-choices': '1' },
    element('qti-prompt', {}, 'The verdict'),
    ...verdictChoices.map((choice) => element('qti-simple-choice', { identifier: choice }, choice)),
  );
}

function processing(key: Key): XmlElement {
  if (key.kind === 'choice') return element('qti-response-processing', { template: matchCorrect });
  const tolerance = `${tolerancePercent} ${tolerancePercent}`;
  return element(
    'qti-response-processing',
    {},
    element(
      'qti-response-condition',
      {},
      element(
        'qti-response-if',
        {},
        element(
          'qti-equal',
          { 'tolerance-mode': 'relative', tolerance },
          element('qti-variable', { identifier: 'RESPONSE' }),
          element('qti-correct', { identifier: 'RESPONSE' }),
        ),
        setScore('1'),
      ),
      element('qti-response-else', {}, setScore('0')),
    ),
  );
}

function setScore(score: string): XmlElement {
  return element(
    'qti-set-outcome-value',
    { identifier: 'SCORE' },
    element('qti-base-value', { 'base-type': 'float' }, score),
  );
}
