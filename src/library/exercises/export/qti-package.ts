import { zipSync } from 'fflate';
import type { ExportedQuestion } from './exported-question.ts';
import { assessmentAttributes, qtiItem } from './qti-item.ts';
import type { SheetOfQuestions } from './questions-csv.ts';
import { element, type XmlElement, xmlDocument } from './xml.ts';

/** Namespace and schema of the manifest: IMS Content Packaging 1.2 as profiled by QTI 3.0. */
const manifestAttributes = {
  xmlns: 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1',
  'xmlns:xsi': 'http://www.w3.org/2001/XMLSchema-instance',
  'xsi:schemaLocation':
    'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1 https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd',
};

/** The same questions make the same file: a ZIP can hold no earlier time. */
const earliest = new Date(1980, 0, 1);

const itemFile = (id: string) => `items/${id}.xml`;
const testId = (number: number) => `sheet_${number}`;
const testFile = (number: number) => `${testId(number)}.xml`;

/**
 * The files of a package by name: the manifest, a test for each sheet with a section for each article, and the items.
 * `name` is part of the identifiers.
 */
export function qtiFiles(name: string, title: string, sheets: readonly SheetOfQuestions[]): Record<string, string> {
  const items = new Map(sheets.flatMap(({ questions }) => questions.map((question) => [question.id, question])));
  const files: Record<string, string> = { 'imsmanifest.xml': xmlDocument(manifest(name, sheets, [...items.keys()])) };
  for (const sheet of sheets) files[testFile(sheet.number)] = xmlDocument(test(sheet, title));
  for (const [id, question] of items) files[itemFile(id)] = xmlDocument(qtiItem(question));
  return files;
}

/** A package as a ZIP file, for a learning system. */
export function qtiPackage(name: string, title: string, sheets: readonly SheetOfQuestions[]): Uint8Array<ArrayBuffer> {
  const encoder = new TextEncoder();
  const files = Object.entries(qtiFiles(name, title, sheets)).map(([file, text]) => [file, encoder.encode(text)]);
  return zipSync(Object.fromEntries(files), { mtime: earliest });
}

function test({ number, questions }: SheetOfQuestions, title: string): XmlElement {
  return element(
    'qti-assessment-test',
    { ...assessmentAttributes, identifier: testId(number), title: `${title}, sheet ${number}` },
    element(
      'qti-test-part',
      { identifier: 'part', 'navigation-mode': 'nonlinear', 'submission-mode': 'individual' },
      ...byArticle(questions).map(([first, ...rest]) =>
        element(
          'qti-assessment-section',
          { identifier: first.article.replace('/', '_'), title: first.title, visible: 'true' },
          ...[first, ...rest].map(({ id }) =>
            element('qti-assessment-item-ref', { identifier: id, href: itemFile(id) }),
          ),
        ),
      ),
    ),
  );
}

/** Neighbours of one article together. */
function byArticle(questions: readonly ExportedQuestion[]): [ExportedQuestion, ...ExportedQuestion[]][] {
  const groups = new Map<string, [ExportedQuestion, ...ExportedQuestion[]]>();
  for (const question of questions) {
    const group = groups.get(question.article);
    if (group === undefined) groups.set(question.article, [question]);
    else group.push(question);
  }
  return [...groups.values()];
}

function manifest(name: string, sheets: readonly SheetOfQuestions[], items: readonly string[]): XmlElement {
  return element(
    'manifest',
    { ...manifestAttributes, identifier: `manifest_${name}` },
    element('metadata', {}, element('schema', {}, 'QTI Package'), element('schemaversion', {}, '3.0.1')),
    element('organizations'),
    element(
      'resources',
      {},
      ...sheets.map(({ number, questions }) =>
        element(
          'resource',
          { identifier: `resource_${testId(number)}`, type: 'imsqti_test_xmlv3p0', href: testFile(number) },
          element('file', { href: testFile(number) }),
          ...questions.map(({ id }) => element('dependency', { identifierref: `resource_${id}` })),
        ),
      ),
      ...items.map((id) =>
        element(
          'resource',
          { identifier: `resource_${id}`, type: 'imsqti_item_xmlv3p0', href: itemFile(id) },
          element('file', { href: itemFile(id) }),
        ),
      ),
    ),
  );
}
