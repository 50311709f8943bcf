import { describe, expect, it } from 'vitest';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import {
  column,
  figuresColumn,
  heading,
  list,
  paragraph,
  type Block,
  type Paper,
} from '../../../shared-core/papers/paper.js';
import { asCsv } from '../../../shared-core/papers/render/csv.js';
import { asHtml } from '../../../shared-core/papers/render/html.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { handMade } from '../drawing/panels.js';

const scene = boreMapScene(handMade(), 'left')!;
const LONG =
  'Each panel lies with its outside face down and its front edge against the fence, and never comes over to the other side.';

/** Every kind of block, and text that a renderer may trip over. */
const BLOCKS: readonly Block<string>[] = [
  ...list(['One & two', 'Three']),
  heading(1, 'Set-up 1 of 2', 'row-drill'),
  {
    kind: 'cautions',
    items: ['Isolate it from power before reaching into the machine, lock it off, and mind the dust.'],
  },
  paragraph(LONG),
  paragraph('Change what is marked:'),
  {
    kind: 'figures',
    figures: [
      { name: 'fence', value: '37 mm', about: 'to spindle 1', marked: false, doing: [] },
      { name: 'bits', value: 'Ø 5 mm', about: '', marked: true, doing: ['Put in <two>.'] },
    ],
    note: 'One that is not named is empty.',
  },
  {
    kind: 'table',
    columns: [column('Panel'), figuresColumn('Stroke'), column('What to do')],
    rows: [
      ['left', '1', 'Bottom end at near-left'],
      [null, '2', 'Slide it along'],
      ['right', '10', ''],
    ],
  },
  heading(2, 'sink'),
  { kind: 'picture', name: 'left', about: 'A "side"', scene, file: 'a b/left.svg' },
  { kind: 'picture', name: 'right', about: 'The other', scene, file: 'right.svg' },
  heading(3, 'left: 720 mm'),
  ...list(['Groove on the inside face.']),
];
const PAPER: Paper<string> = { title: 'Kitchen', blocks: BLOCKS };

describe('a paper as text', () => {
  it('breaks running text, keeps an item and a row in their lines, and pads what stands under each other', () => {
    expect(asText(PAPER).split('\n')).toEqual([
      'Kitchen',
      'One & two',
      'Three',
      '',
      '='.repeat(78),
      `Set-up 1 of 2${' '.repeat(56)}row-drill`,
      '='.repeat(78),
      '  ! Isolate it from power before reaching into the machine, lock it off, and',
      '    mind the dust.',
      '',
      'Each panel lies with its outside face down and its front edge against the',
      'fence, and never comes over to the other side.',
      'Change what is marked:',
      '    fence  37 mm to spindle 1',
      '  * bits   Ø 5 mm',
      '           Put in <two>.',
      '    One that is not named is empty.',
      '',
      '  Panel  Stroke  What to do',
      '  left        1  Bottom end at near-left',
      '              2  Slide it along',
      '  right      10',
      '',
      'sink',
      '  (picture: left)',
      '',
      '  (picture: right)',
      '',
      '  left: 720 mm',
      '  Groove on the inside face.',
      '',
    ]);
  });

  it('of nothing is one empty line', () => {
    expect(asText({ title: '', blocks: [] })).toBe('\n');
  });

  it('keeps a word that is longer than the line whole', () => {
    const word = 'x'.repeat(100);
    expect(asText({ title: '', blocks: [paragraph(`a ${word} b`)] })).toBe(`a\n${word}\nb\n`);
  });
});

describe('a paper as a page', () => {
  const page = asHtml(PAPER);

  it('says everything that the text says, with nothing of it read as markup', () => {
    expect(page).toContain('<h1>Kitchen</h1>');
    expect(page).toContain('<li>One &amp; two</li>');
    expect(page).toContain('<h2 id="part-2">Set-up 1 of 2 <span class="aside">row-drill</span></h2>');
    expect(page).toContain(`<p>${LONG}</p>`);
    expect(page).toContain('<dd class="doing">Put in &lt;two&gt;.</dd>');
    expect(page).toContain('<p class="note">One that is not named is empty.</p>');
    expect(page).not.toMatch(/<script|<two/);
  });

  it('has a cell that is not said again as one with the cell above', () => {
    expect(page).toContain(
      '<tr><td rowspan="2">left</td><td class="figure">1</td><td>Bottom end at near-left</td></tr>\n' +
        '<tr><td class="figure">2</td><td>Slide it along</td></tr>\n' +
        '<tr><td>right</td><td class="figure">10</td><td></td></tr>',
    );
  });

  it('marks what is to be changed by a sign, not by its look alone', () => {
    expect(page).toMatch(/<div class="marked"><dt><span class="mark" title="to be changed">\* <\/span>bits<\/dt>/);
    expect(page).toMatch(/<div><dt>fence<\/dt>/);
  });

  it('begins with its contents, each linked to its own heading', () => {
    const links = [...page.matchAll(/<a href="#(part-\d+)">([^<]+)<\/a>/g)].map(([, anchor, text]) => [anchor, text]);
    expect(links.map(([, text]) => text)).toEqual(['Set-up 1 of 2', 'sink']);
    for (const [anchor] of links) expect(page.split(`id="${anchor!}"`)).toHaveLength(2);
    expect(asHtml({ title: 'One', blocks: [heading(1, 'alone')] })).not.toContain('<nav');
  });

  it('shows pictures side by side, by their files where they have one', () => {
    expect(page).toContain(
      '<div class="pictures">\n<figure><a href="a%20b/left.svg"><img loading="lazy" src="a%20b/left.svg" alt="A &quot;side&quot;"></a><figcaption>left</figcaption></figure>\n<figure>',
    );
    expect(page.match(/<div class="pictures">/g)).toHaveLength(1);
    const here = asHtml({ title: 'x', blocks: [{ kind: 'picture', name: 'left', about: '', scene, file: null }] });
    expect(here).toMatch(/<figure><svg [\s\S]*<\/svg>\s*<figcaption>left<\/figcaption><\/figure>/);
    expect(here).not.toContain('<?xml');
  });
});

describe('a paper as CSV', () => {
  it('is its tables, what is as above written out; none without a table', () => {
    expect(asCsv(PAPER)).toBe(
      'Panel,Stroke,What to do\r\nleft,1,Bottom end at near-left\r\nleft,2,Slide it along\r\nright,10,\r\n',
    );
    expect(asCsv({ title: 'Kitchen', blocks: [paragraph(LONG)] })).toBeNull();
  });
});
