import type { ReadElement } from './read-xml.ts';

/** What one element may hold. `children`: names in their order, each with ? or * as in a grammar; `text`: words too. */
interface Model {
  required: string[];
  optional?: string[];
  /** The only values that an attribute may have, or what they look like. */
  values?: Record<string, RegExp>;
  children?: string;
  text?: true;
}

const identifier = /^[A-Za-z_][\w.-]*$/;
const number = /^-?\d+(?:\.\d+)?$/;
const schema = ['xmlns', 'xmlns:xsi', 'xsi:schemaLocation'];
const declared = { identifier, cardinality: /^single$/, 'base-type': /^(identifier|float|string)$/ };

/**
 * The part of IMS QTI 3.0.1 that the export uses, written down by hand. Read: the example packages that the standard's
 * publisher keeps for its Beginner's Guide and its Best Practice and Implementation Guide (manifest, test, choice item,
 * essay, rubric blocks, text entry, response processing), read on 2026-11-28. Recalled from memory, from the
 * Assessment, Section and Item information model: the order of an item's parts, which attributes are required, the
 * values of `view`, `use`, `navigation-mode`, `submission-mode` and `tolerance-mode`.
 */
export const models: Record<string, Model> = {
  manifest: { required: ['identifier', ...schema], children: 'metadata organizations resources' },
  metadata: { required: [], children: 'schema schemaversion' },
  schema: { required: [], text: true },
  schemaversion: { required: [], text: true },
  organizations: { required: [] },
  resources: { required: [], children: 'resource*' },
  resource: {
    required: ['identifier', 'type', 'href'],
    values: { identifier, type: /^imsqti_(test|item)_xmlv3p0$/ },
    children: 'file dependency*',
  },
  file: { required: ['href'] },
  dependency: { required: ['identifierref'] },
  'qti-assessment-test': { required: ['identifier', 'title', ...schema], children: 'qti-test-part*' },
  'qti-test-part': {
    required: ['identifier', 'navigation-mode', 'submission-mode'],
    values: { 'navigation-mode': /^(linear|nonlinear)$/, 'submission-mode': /^(individual|simultaneous)$/ },
    children: 'qti-assessment-section*',
  },
  'qti-assessment-section': {
    required: ['identifier', 'title', 'visible'],
    values: { identifier, visible: /^(true|false)$/ },
    children: 'qti-assessment-item-ref*',
  },
  'qti-assessment-item-ref': { required: ['identifier', 'href'], values: { identifier } },
  'qti-assessment-item': {
    required: ['identifier', 'title', 'time-dependent', ...schema],
    optional: ['adaptive', 'xml:lang'],
    values: { identifier, adaptive: /^(true|false)$/, 'time-dependent': /^(true|false)$/ },
    children: 'qti-response-declaration* qti-outcome-declaration* qti-item-body? qti-response-processing?',
  },
  'qti-response-declaration': {
    required: ['identifier', 'cardinality', 'base-type'],
    values: declared,
    children: 'qti-correct-response?',
  },
  'qti-correct-response': { required: [], children: 'qti-value' },
  'qti-value': { required: [], text: true },
  'qti-outcome-declaration': {
    required: ['identifier', 'cardinality', 'base-type'],
    optional: ['normal-maximum', 'external-scored'],
    values: { ...declared, 'normal-maximum': number, 'external-scored': /^(human|externalMachine)$/ },
    children: 'qti-default-value?',
  },
  'qti-default-value': { required: [], children: 'qti-value' },
  'qti-item-body': {
    required: [],
    children: 'p p? qti-choice-interaction? qti-extended-text-interaction qti-rubric-block',
  },
  p: { required: [], text: true, children: 'qti-text-entry-interaction?' },
  'qti-text-entry-interaction': {
    required: ['response-identifier'],
    optional: ['expected-length'],
    values: { 'expected-length': /^\d+$/ },
  },
  'qti-choice-interaction': {
    required: ['response-identifier', 'max-choices'],
    values: { 'max-choices': /^\d+$/ },
    children: 'qti-prompt? qti-simple-choice*',
  },
  'qti-prompt': { required: [], text: true },
  'qti-simple-choice': { required: ['identifier'], values: { identifier }, text: true },
  'qti-extended-text-interaction': { required: ['response-identifier'], children: 'qti-prompt?' },
  'qti-rubric-block': {
    required: ['view', 'use'],
    values: {
      view: /^(author|candidate|proctor|scorer|testConstructor|tutor)$/,
      use: /^(instructions|scoring|navigation)$/,
    },
    children: 'qti-content-body',
  },
  'qti-content-body': { required: [], children: 'p*' },
  'qti-response-processing': {
    required: [],
    optional: ['template'],
    values: { template: /^https:\/\/purl\.imsglobal\.org\/spec\/qti\/v3p0\/rptemplates\/match_correct$/ },
    children: 'qti-response-condition*',
  },
  'qti-response-condition': { required: [], children: 'qti-response-if qti-response-else?' },
  'qti-response-if': { required: [], children: 'qti-equal qti-set-outcome-value*' },
  'qti-response-else': { required: [], children: 'qti-set-outcome-value*' },
  'qti-equal': {
    required: ['tolerance-mode'],
    optional: ['tolerance'],
    values: { 'tolerance-mode': /^(exact|absolute|relative)$/, tolerance: /^\d+(\.\d+)?( \d+(\.\d+)?)?$/ },
    children: 'qti-variable qti-correct',
  },
  'qti-variable': { required: ['identifier'], values: { identifier } },
  'qti-correct': { required: ['identifier'], values: { identifier } },
  'qti-set-outcome-value': { required: ['identifier'], values: { identifier }, children: 'qti-base-value' },
  'qti-base-value': { required: ['base-type'], values: { 'base-type': /^(identifier|float|string)$/ }, text: true },
};

/** What does not fit the models, in words; empty if all does. */
export function misfits({ name, attributes, children }: ReadElement): string[] {
  const model = models[name];
  if (model === undefined) return [`${name} is not known`];
  const { required, optional = [], values = {}, text } = model;
  const elements = children.filter((child): child is ReadElement => typeof child !== 'string');
  // A name ends with a space in the row of children, so that no name is the beginning of another.
  const grammar = (model.children ?? '').split(' ').filter(Boolean);
  const order = new RegExp(`^${grammar.map((part) => part.replace(/^([\w-]+)([?*]?)$/, '(?:$1 )$2')).join('')}$`);
  const row = elements.map((child) => `${child.name} `).join('');
  return [
    ...required.filter((wanted) => !(wanted in attributes)).map((wanted) => `${name} lacks ${wanted}`),
    ...Object.keys(attributes)
      .filter((given) => ![...required, ...optional].includes(given))
      .map((given) => `${name} has ${given}`),
    ...Object.entries(values)
      .filter(([key, shape]) => key in attributes && !shape.test(attributes[key] ?? ''))
      .map(([key]) => `${name}: ${key} is ${attributes[key]}`),
    ...(text || elements.length === children.length ? [] : [`${name} has text`]),
    ...(order.test(row) ? [] : [`${name} holds ${row}`]),
    ...elements.flatMap(misfits),
  ];
}
