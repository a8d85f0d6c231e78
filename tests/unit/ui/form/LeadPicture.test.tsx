import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { LeadPicture } from '../../../../src/ui/form/LeadPicture.tsx';

// No source: the project's own drawing.

const phases = ['U', 'V', 'W'];
const drive = { at: 'Drive', meter: 'Ω', terminals: ['DC+', 'DC−', ...phases] };

/** Where each line of a lead ends, and whether it is the first. */
function ends(html: string, lead: 'red' | 'black') {
  const [, group = ''] = new RegExp(`<g class="lead ${lead}">(.*?)</g>`).exec(html) ?? [];
  return [...group.matchAll(/<path( class="later")? d="M\d+ \d+H([\d.]+)V28"/g)].map(([, later, x]) => [
    Number(x),
    later === undefined,
  ]);
}

const column = (html: string, terminal: string) =>
  Number(new RegExp(`<text x="([\\d.]+)"[^>]*>${terminal.replace('+', '\\+')}</text>`).exec(html)?.[1]);

test('each lead ends at its terminals, solid at the first and dashed at those that follow', () => {
  const html = renderToString(<LeadPicture {...drive} red={['DC+']} black={phases} />);
  expect(ends(html, 'red')).toEqual([[column(html, 'DC+'), true]]);
  expect(ends(html, 'black')).toEqual([
    [column(html, 'U'), true],
    [column(html, 'V'), false],
    [column(html, 'W'), false],
  ]);
});

test('exchanged leads are drawn exchanged', () => {
  const html = renderToString(<LeadPicture {...drive} red={phases} black={['DC−']} />);
  expect(ends(html, 'black')).toEqual([[column(html, 'DC−'), true]]);
  expect(ends(html, 'red')).toHaveLength(3);
});

test('what is joined has a bar from the first terminal to the last, and a mark at each', () => {
  const html = renderToString(<LeadPicture {...drive} red={['U']} black={['DC−']} joined={phases} />);
  expect(html).toContain(`d="M${column(html, 'U')} 2H${column(html, 'W')}"`);
  expect(html.match(/class="joined"/g)).toHaveLength(4);
});

test('the words tell the leads apart, not the colour alone', () => {
  const html = renderToString(<LeadPicture {...drive} red={['DC+']} black={phases} />);
  expect(html).toMatch(/>red<\/text>.*/);
  expect(html).toMatch(/>black<\/text>.*/);
  expect(html).toContain('aria-hidden="true"');
});
