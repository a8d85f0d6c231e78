/** Between two nodes, in ohms. */
export interface Resistor {
  kind: 'resistor';
  a: string;
  b: string;
  ohms: number;
}

/** `volts` behind `ohms`; `a` is the positive end. Every source has an inner resistance. */
export interface Source {
  kind: 'source';
  a: string;
  b: string;
  volts: number;
  ohms: number;
}

/** `saturation` in amperes and `slope` (ideality times thermal voltage) in volts, both at its temperature. */
export interface Diode {
  kind: 'diode';
  anode: string;
  cathode: string;
  saturation: number;
  slope: number;
}

/** In farads, charged to `volts`; `a` is the positive end. */
export interface Capacitor {
  kind: 'capacitor';
  a: string;
  b: string;
  farads: number;
  volts: number;
}

/** A carbonised path that conducts, with `ohms`, only if at least `volts` stand across it, either way round. */
export interface Gap {
  kind: 'gap';
  a: string;
  b: string;
  ohms: number;
  volts: number;
}

export type Element = Resistor | Source | Diode | Capacitor | Gap;

/** The reference node of all voltages: the cabinet's protective bar and the machine's frame. */
export const ground = 'ground';

export const resistor = (a: string, b: string, ohms: number): Resistor => ({ kind: 'resistor', a, b, ohms });

export const source = (a: string, b: string, volts: number, ohms: number): Source => ({
  kind: 'source',
  a,
  b,
  volts,
  ohms,
});

/** Every node but ground, numbered in the order of first use. */
export function nodeIndex(elements: readonly Element[]): Map<string, number> {
  const index = new Map<string, number>();
  const add = (node: string) => {
    if (node !== ground && !index.has(node)) index.set(node, index.size);
  };
  for (const element of elements) endsOf(element).forEach(add);
  return index;
}

/** The two nodes of an element. */
export function endsOf(element: Element): [string, string] {
  return element.kind === 'diode' ? [element.anode, element.cathode] : [element.a, element.b];
}

/**
 * The elements that decide the voltages of these nodes: everything connected to them without passing ground, whose
 * voltage is fixed.
 */
export function partAround(elements: readonly Element[], nodes: readonly string[]): Element[] {
  const at = elementsAt(elements);
  const reached = new Set(nodes);
  // A set hands out what is added to it while it is walked through.
  for (const node of reached) {
    if (node === ground) continue;
    for (const element of at.get(node) ?? []) for (const end of endsOf(element)) reached.add(end);
  }
  reached.delete(ground);
  return elements.filter((element) => endsOf(element).some((end) => reached.has(end)));
}

function elementsAt(elements: readonly Element[]): Map<string, Element[]> {
  const at = new Map<string, Element[]>();
  for (const element of elements) {
    for (const end of endsOf(element)) {
      const list = at.get(end);
      if (list === undefined) at.set(end, [element]);
      else list.push(element);
    }
  }
  return at;
}
