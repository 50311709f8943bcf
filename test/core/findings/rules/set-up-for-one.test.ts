import { expect, test } from 'vitest';
import { inWords } from '../../../in-words.js';
import { analyse, demoText } from '../jobs.js';

const job = (tools: string): string =>
  `shop: shed.shop.yaml\ncarcasses:\n  sink: { kind: wall, width: 600 }\n  tools:\n    kind: wall\n    width: 700\n${tools}`;
const read = (text: string): ReturnType<typeof analyse> =>
  analyse(text, { 'shed.shop.yaml': demoText('shed.shop.yaml') });

function told(text: string): readonly (readonly [at: string, words: string])[] {
  const analysis = read(text);
  return analysis
    .findings()
    .filter(({ finding }) => finding.rule === 'set-up-for-one')
    .map(({ finding, carcass }) => {
      const { start, end } = analysis.locate(finding.place, carcass);
      return [text.slice(start, end), inWords(finding.message)] as const;
    });
}

test('a depth that one panel alone has: with that of the others there is one set-up less', () => {
  const alone = job('    panels: { left: { face-depth: 11.5 } }\n');
  expect(told(alone)).toEqual([
    [
      '11.5',
      'left has a set-up of borer-up to itself, which takes 30 s more than that of ‘sink’. Only its depth differs: 11.5 mm instead of 12 mm. With bores 12 mm deep the panel could be bored along with ‘sink’.',
    ],
  ]);
  const like = job('    panels: { left: { face-depth: 12 } }\n');
  expect(told(like)).toEqual([]);
  expect(read(like).setUps()).toHaveLength(read(alone).setUps().length - 1);
});

test('a row that one panel alone has elsewhere: told in the words of the machine', () => {
  const alone = job('    panels: { right: { rows: none } }\n    rear-row: 229\n');
  const like = job('    panels: { right: { rows: none } }\n    rear-row: 261\n');
  expect(told(alone)).toEqual([
    [
      '229',
      'left has a set-up of row-drill to itself, which takes 1 min 30 s more than that of ‘sink’. Only its distance from the fence differs: 229 mm instead of 261 mm. With the rear row 261 mm from the front edge (`rear-row`) the panel could be bored along with ‘sink’.',
    ],
  ]);
  expect(told(like)).toEqual([]);
  expect(read(like).setUps()).toHaveLength(read(alone).setUps().length - 1);
});

test('a drill with one head: the row that would move is named, not the head', () => {
  const drill = `line-drills:
  single: { spindles: 27, pitch: 32, heads: 1, fence: far, from: above, setback: 20 to 640, throat: 700, depth: 0 to 60, index-pins: row,
    stops: { G: { side: left, range: 0 to 300 }, H: { side: right, range: 0 to 300 } } }`;
  const onOneHead = (tools: string): readonly string[] => {
    const text = `shop: one.shop.yaml\ncarcasses:\n  sink: { kind: wall, width: 600, panels: { right: { rows: none } } }\n  tools:\n    kind: wall\n    width: 700\n    panels: { right: { rows: none } }\n${tools}`;
    const analysis = analyse(text, { 'one.shop.yaml': drill });
    return analysis
      .findings()
      .filter(({ finding }) => finding.rule === 'set-up-for-one' && finding.bores?.[0]?.includes('row'))
      .map(({ finding, carcass }) => {
        const { start, end } = analysis.locate(finding.place, carcass);
        return `${text.slice(start, end)}: ${inWords(finding.message)}`;
      });
  };
  expect(onOneHead('    rear-row: 229\n')).toEqual([
    'sink: left has a set-up of single to itself, which takes 1 min more than that of ‘tools’. Only its distance from the fence differs: 261 mm instead of 229 mm. With the rear row 229 mm from the front edge (`rear-row`) the panel could be bored along with ‘tools’.',
    '229: left has a set-up of single to itself, which takes 1 min more than that of ‘sink’. Only its distance from the fence differs: 229 mm instead of 261 mm. With the rear row 261 mm from the front edge (`rear-row`) the panel could be bored along with ‘sink’.',
  ]);
  expect(onOneHead('    row-setback: 69\n    rear-row: 261\n')).toEqual([
    'sink: left has a set-up of single to itself, which takes 1 min more than that of ‘tools’. Only its distance from the fence differs: 37 mm instead of 69 mm. With the front row 69 mm from the front edge (`row-setback`) the panel could be bored along with ‘tools’.',
    '69: left has a set-up of single to itself, which takes 1 min more than that of ‘sink’. Only its distance from the fence differs: 69 mm instead of 37 mm. With the front row 37 mm from the front edge (`row-setback`) the panel could be bored along with ‘sink’.',
  ]);
  // The rear row of sink is no place for the front row of tools.
  expect(onOneHead('    rows: front\n    row-setback: 261\n')).toEqual([]);
});

test.each([
  [
    'a job of one carcass',
    'shop: shed.shop.yaml\ncarcasses:\n  a: { kind: wall, width: 600, panels: { left: { face-depth: 11.5 } } }\n',
  ],
  ['several equal ones', job('    count: 2\n    panels: { left: { face-depth: 11.5 } }\n')],
])('nothing is told of %s', (_, text) => {
  expect(told(text)).toEqual([]);
});
