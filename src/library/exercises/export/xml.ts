/** An element with its attributes and children; texts are escaped when it is written. */
export interface XmlElement {
  name: string;
  attributes: Record<string, string>;
  children: (XmlElement | string)[];
}

export function element(
  name: string,
  attributes: Record<string, string> = {},
  ...children: (XmlElement | string)[]
): XmlElement {
  return { name, attributes, children };
}

/** A whole XML document. A line a tag, except in an element that has text: there every space counts. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, '')}\n`;
}

function written({ name, attributes, children }: XmlElement, indent: string): string {
  const named = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  const start = `${indent}<${name}${named.join('')}`;
  if (children.length === 0) return `${start}/>`;
  if (children.some((child) => typeof child === 'string')) {
    const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : written(child, '')));
    return `${start}>${inside.join('')}</${name}>`;
  }
  const inside = children.map((child) => written(child as XmlElement, `${indent}  `));
  return `${start}>\n${inside.join('\n')}\n${indent}</${name}>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
