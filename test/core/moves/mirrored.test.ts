import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inRoom } from '../like/in-room.js';
import { job, whole, written } from '../like/texts.js';
import { after, carcassOf, comments, offered } from './moves.js';

const TITLE = 'Change left and right over';

test('the text is mirrored line by line, and comments stay where they are', () => {
  const text = `carcasses:
  desk: # under the window
    kind: base
    width: 1000
    dividers: [400] # the drawers
    fronts:
      - { front: drawer, bay: 1, height: 140 } # pens
      - { front: left, bay: 2 } # paper
    panels:
      left: { board: board-16 } # seen
      bottom: { bands: { far-end: band-2 }, far-end: { dowels: 3 } }
    height: 720
    row-offset: 8
`;
  expect(after(text, 'desk', TITLE)).toBe(`carcasses:
  desk: # under the window
    kind: base
    width: 1000
    dividers: [600] # the drawers
    fronts:
      - { front: drawer, bay: 2, height: 140 } # pens
      - { front: right, bay: 1 } # paper
    panels:
      right: { board: board-16 } # seen
      bottom: { bands: { reference-end: band-2 }, reference-end: { dowels: 3 } }
    height: 720
    row-offset: 8
`);
});

test('a bay that is not there stays the one that it is', () => {
  const text = `carcasses:
  a:
    kind: base
    width: 900
    dividers: 1
    row-holes: { bays: [1, 3] }
    loose-shelves: [{ at: 300, bay: 1 }, { at: 300, bay: 3 }]
`;
  const mirrored = text.replace('[1, 3]', '[2, 3]').replace('bay: 1', 'bay: 2');
  expect(after(text, 'a:', TITLE)).toBe(mirrored);
});

test('where no rows are bored, no place is written for them', () => {
  const text = `carcasses:
  a:
    kind: open
    width: 700
    panels:
      right: { board: board-16 }
`;
  const mirrored = after(text, 'a:', TITLE)!;
  expect(mirrored).toContain('left: { board: board-16 }');
  expect(mirrored).not.toContain('row-offset');
});

test('what the defaults say of hands is answered in the carcass', () => {
  const text = 'defaults:\n  doors: left\ncarcasses:\n  a:\n    kind: wall\n    width: 400\n';
  expect(after(text, 'a:\n    kind', TITLE, 0)).toBe(`${text}    doors: right\n`);
});

test('what stands on one hand changes over; what the defaults put there cannot be unsaid, and nothing is offered', () => {
  const own = 'carcasses:\n  a:\n    kind: base\n    width: 600\n    fillers: { left: 40 } # by the wall\n';
  expect(after(own, 'a:\n    kind', TITLE)).toBe(own.replace('left: 40', 'right: 40'));
  const given = 'defaults:\n  fillers: { left: 40 }\ncarcasses:\n  a:\n    kind: base\n    width: 600\n';
  expect(offered(given, 'a:\n    kind').includes(TITLE)).toBe(false);
});

test('nothing is offered for what is its own mirror image, or like another one', () => {
  const text = 'carcasses:\n  a:\n    kind: wall\n    width: 400\n  b:\n    like: a\n    doors: left\n';
  expect(offered(text, '  a:\n').includes(TITLE)).toBe(false);
  expect(offered(text, 'b:\n').includes(TITLE)).toBe(false);
});

test('it becomes the mirror image, bore by bore, and comes back when it is mirrored again', () => {
  let count = 0;
  fc.assert(
    fc.property(whole, (said) => {
      const text = job(written('a', said).replace('\n', ' # mine\n'));
      const before = carcassOf(text, 'a');
      const changed = after(text, '  a:', TITLE, 3);
      if (changed === null || before.carcass === null) return;
      const then = carcassOf(changed, 'a');
      expect(comments(changed)).toEqual(comments(text));
      expect(then.carcass, changed).not.toBeNull();
      const [image, own] = [inRoom(then, before.spec!.width.value), inRoom(before, null)];
      expect(image.panels, changed).toEqual(own.panels);
      if (!before.carcass.joints.some(({ stagger }) => stagger)) expect(image.bores, changed).toEqual(own.bores);
      const back = carcassOf(after(changed, '  a:', TITLE, 3)!, 'a');
      expect(inRoom(back, null), changed).toEqual(own);
      count += 1;
    }),
    { numRuns: 80 },
  );
  expect(count).toBeGreaterThan(25);
});
