/** An element of a read document; texts that are only spaces between tags are left out. */
export interface ReadElement {
  name: string;
  attributes: Record<string, string>;
  children: (ReadElement | string)[];
}

const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"' };
const decoded = (text: string) => text.replaceAll(/&(\w+);/g, (_, name: string) => entities[name] ?? `&${name};`);

/**
 * Reads a document, for tests: elements, attributes in double quotes, texts. Throws if it is not well-formed: a tag not
 * closed or closed twice, a bare < or & in a text or an attribute, an attribute that comes twice, two roots.
 */
export function readXml(text: string): ReadElement {
  const top: ReadElement = { name: '', attributes: {}, children: [] };
  const open = [top];
  const body = text.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, '');
  const tokens = /<(\/?)([A-Za-z][\w:.-]*)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
  while (tokens.lastIndex < body.length) {
    const at = tokens.lastIndex;
    const token = tokens.exec(body);
    if (token === null) throw new Error(`not well-formed at ${body.slice(at, at + 40)}`);
    const [, end, name = '', attributes = '', empty, words] = token;
    const parent = open[open.length - 1] as ReadElement;
    if (words !== undefined) {
      checkText(words);
      if (words.trim() !== '') parent.children.push(decoded(words));
    } else if (end) {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes another element`);
    } else {
      const element: ReadElement = { name, attributes: readAttributes(attributes), children: [] };
      parent.children.push(element);
      if (!empty) open.push(element);
    }
  }
  const [root, ...more] = top.children;
  if (open.length !== 1 || root === undefined || typeof root === 'string' || more.length > 0)
    throw new Error('not one closed root');
  return root;
}

function readAttributes(text: string): Record<string, string> {
  const read: Record<string, string> = {};
  for (const [, name = '', value = ''] of text.matchAll(/([\w:.-]+)="([^"]*)"/g)) {
    if (name in read) throw new Error(`${name} comes twice`);
    checkText(value);
    read[name] = decoded(value);
  }
  return read;
}

function checkText(text: string) {
  if (/&(?!(?:amp|lt|gt|quot);)/.test(text)) throw new Error(`a bare & in “${text}”`);
}
