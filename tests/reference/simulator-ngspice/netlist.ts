import { thermalVolts } from '../../../src/practice/simulator/diode-law.ts';
import { type Capacitor, type Element, ground, nodeIndex } from '../../../src/practice/simulator/network.ts';

/** The simulator's leakage from every node to ground, as a resistor for ngspice, so that both solve one network. */
const leakOhms = 1e14;

/** A copy of a network within one deck, and the two nodes whose voltage is wanted. */
export interface Asked {
  name: string;
  elements: readonly Element[];
  red: string;
  black: string;
}

/** One network with the voltages that are compared at rest. */
export interface RestCase {
  name: string;
  celsius: number;
  asked: Asked[];
}

/** Voltages at rest between two nodes of each network, as one deck; nodes of the copies differ by number. */
export function restDeck(title: string, celsius: number, asked: readonly Asked[]): string {
  const copies = asked.map((one, copy) => {
    const node = namer(one.elements, copy);
    return {
      lines: lines(one.elements, node, copy, celsius),
      print: `let ${one.name} = ${difference(node(one.red), node(one.black))}`,
    };
  });
  return deck(title, celsius, [
    ...copies.flatMap(({ lines: own }) => own),
    '.control',
    'set numdgt=12',
    'op',
    ...copies.map(({ print }) => print),
    ...asked.map(({ name }) => `print ${name}`),
    'quit',
    '.endc',
  ]);
}

/** Voltage of one capacitor of the network, the first unless told otherwise, at these times from its beginning. */
export function dischargeDeck(
  title: string,
  celsius: number,
  elements: readonly Element[],
  seconds: readonly number[],
  position = 0,
): string {
  const node = namer(elements, 0);
  const wanted = elements.filter((element): element is Capacitor => element.kind === 'capacitor')[position];
  if (wanted === undefined) throw new Error('no such capacitor');
  const last = Math.max(...seconds);
  const voltage = `par('${difference(node(wanted.a), node(wanted.b))}')`;
  return deck(title, celsius, [
    ...lines(elements, node, 0, celsius),
    `.tran ${last / 2000} ${last} 0 ${last / 4000} uic`,
    ...seconds.map((time) => `.meas tran after${time} find ${voltage} at=${time}`),
  ]);
}

function deck(title: string, celsius: number, body: string[]): string {
  const options = `.options temp=${celsius} tnom=${celsius} gmin=1e-16 reltol=1e-7 abstol=1e-18 vntol=1e-10 method=gear`;
  return [
    `* ${title}`,
    '* Generated from src/practice/simulator by tests/reference/simulator-ngspice/netlist.ts',
    options,
    ...body,
    '.end',
    '',
  ].join('\n');
}

type Namer = (node: string) => string;

function namer(elements: readonly Element[], copy: number): Namer {
  const index = nodeIndex(elements);
  return (node) => (node === ground ? '0' : `n${copy}_${index.get(node)}`);
}

function difference(a: string, b: string): string {
  if (b === '0') return `v(${a})`;
  return a === '0' ? `-v(${b})` : `v(${a})-v(${b})`;
}

function lines(elements: readonly Element[], node: Namer, copy: number, celsius: number): string[] {
  const leaks = [...nodeIndex(elements).keys()].map((name) => `Rleak_${node(name)} ${node(name)} 0 ${leakOhms}`);
  const own = elements.flatMap((element, position) => linesOf(element, `${copy}_${position}`, node, celsius));
  return [...leaks, ...own];
}

function linesOf(element: Element, id: string, node: Namer, celsius: number): string[] {
  switch (element.kind) {
    case 'resistor':
      return [`R${id} ${node(element.a)} ${node(element.b)} ${element.ohms}`];
    case 'source':
      return [
        `V${id} in${id} ${node(element.b)} ${element.volts}`,
        `Rin${id} in${id} ${node(element.a)} ${element.ohms}`,
      ];
    case 'capacitor':
      return [`C${id} ${node(element.a)} ${node(element.b)} ${element.farads} ic=${element.volts}`];
    case 'gap':
      // Off below its voltage; once on, it stays on.
      return [
        `S${id} ${node(element.a)} ${node(element.b)} cur${id} 0 G${id} off`,
        `B${id} cur${id} 0 v=abs(v(${node(element.a)},${node(element.b)}))`,
        `.model G${id} sw(vt=${element.volts / 2} vh=${element.volts / 2} ron=${element.ohms} roff=1e15)`,
      ];
    case 'diode':
      return [
        `D${id} ${node(element.anode)} ${node(element.cathode)} D${id}`,
        `.model D${id} D(is=${element.saturation} n=${element.slope / thermalVolts(celsius)})`,
      ];
  }
}
