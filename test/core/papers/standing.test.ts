import { expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import { changeSentences, inOrder, settingsOf } from '../../../shared-core/papers/set-up/settings.js';
import { demoText } from '../findings/jobs.js';

const JOB = 'shop: shed.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, loose-shelves: 1 }\n';

function firstOnDrill(stands: string, stop = '') {
  const shop = demoText('shed.shop.yaml')
    .replace('  row-drill:\n', `  row-drill:\n${stands}`)
    .replace('row-left: { side: left,', `row-left: { side: left,${stop}`);
  const engine = new Engine({ readShop: (_, name) => ({ ok: true, uri: `file:///${name}`, text: shop }) });
  const analysis = engine.analyse('file:///a.carcass.yaml', JOB);
  const one = inOrder(analysis.plan()).find(({ planned }) => planned.setUp.machine.name === 'row-drill')!;
  return {
    seconds: one.planned.seconds,
    words: changeSentences(one, 'mm'),
    changed: settingsOf(one, 'mm')
      .filter(({ changed }) => changed)
      .map(({ name }) => name),
  };
}

test('on a machine that nobody knows, all is set', () => {
  const { words, changed } = firstOnDrill('');
  expect(words[0]).toBe('Go to row-drill and set all of it.');
  expect(changed).toEqual(['front head', 'rear head', 'row-left', 'row-right', 'depth', 'bits']);
});

test('on one that stands as the shop file says, only what differs', () => {
  const { words, changed, seconds } = firstOnDrill(
    '    stands: { bit: 5, fence: [37, 485], depth: 13, thickness: 16 }\n',
    ' stands: 8,',
  );
  expect(words).toEqual(['Go to row-drill, which is set as the shop file says.', 'Set row-right to 8 mm.']);
  expect(changed).toEqual(['row-right']);
  // 120 to go there, 60 for one stop.
  expect(seconds).toBe(180);
});

test('bits that are in the way come out, and the others stay', () => {
  const { words } = firstOnDrill('    stands: { bit: 5, spindles: [1, 2, 3] }\n');
  expect(words.at(-1)).toBe('Put Ø 5 mm into spindles 4 to 23 of both heads.');
  expect(firstOnDrill('    stands: { bit: 8, spindles: [1] }\n').words.slice(-2)).toEqual([
    'Take out Ø 8 mm from spindle 1 of both heads.',
    'Put Ø 5 mm into all 23 spindles of both heads.',
  ]);
});
