import { describe, expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { shopSchema } from '../../../shared-core/shop/schema.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { asMessage, inWords } from '../../in-words.js';

const JOB =
  'shop: own.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, loose-shelves: 1 }\n  b: { kind: wall, width: 600 }\n';

function analyse(shop: string, job = JOB) {
  const engine = new Engine({ readShop: () => ({ ok: true, uri: 'file:///own.shop.yaml', text: shop }) });
  return engine.analyse('file:///x.carcass.yaml', job);
}
function told(shop: string, job = JOB): readonly string[] {
  return analyse(shop, job)
    .findings()
    .map(({ finding }) => `${finding.severity} ${finding.rule}`);
}
const lineOf = (text: string, words: string): number => text.slice(0, text.indexOf(words)).split('\n').length;

/** A shop as it is read, without what is told of keys that do nothing yet: the built-in shop has some. */
function faultsIn(text: string): ReturnType<typeof readShop> {
  const read = readShop(text);
  return { ...read, findings: read.findings.filter(({ rule }) => rule !== 'value-unused') };
}

describe('one wrong figure of a machine', () => {
  test('a range out of bounds keeps the machine, with what of the range can be', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    setback: 20 to 80', '    setback: 20 to 9000');
    const { shop, findings } = faultsIn(text);
    expect(findings.map(({ rule, place }) => [rule, text.slice(place.start, place.end)])).toEqual([
      ['length-impossible', '20 to 9000'],
    ]);
    expect(shop.machines.get('row-drill')).toMatchObject({
      kind: 'line',
      setback: { min: 20_000, max: shopSchema.fields['line-drills'].schema.item.fields.setback.schema.max },
    });
    expect(told(text)).toEqual(['warning shop-broken']);
  });

  test('a range written backwards is read the right way round', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    height: 4 to 40', '    height: 40 to 4');
    expect(readShop(text).shop.machines.get('end-head')).toMatchObject({ height: { min: 4_000, max: 40_000 } });
    expect(told(text)).toEqual(['warning shop-broken']);
  });

  test('a figure that cannot be read leaves the machine out, and that is told once', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    throat: 700', '    throat: wide');
    const { shop, findings } = faultsIn(text);
    expect(findings).toHaveLength(1);
    expect(shop.machines.has('row-drill')).toBe(false);
    expect([...(shop.unread?.machines ?? [])]).toEqual([['row-drill', 'line']]);
    expect(told(text)).toEqual(['error shop-broken']);
    const message = inWords(analyse(text).findings()[0]!.finding.message);
    expect(message).toContain(`in line ${lineOf(text, 'throat: wide')}. ‘wide’ is not a length.`);
    expect(message).toContain(
      'Nothing is worked out or planned with the line drill ‘row-drill’ until the shop file is corrected.',
    );
    // No other drill is there to plan the rows on.
    expect(
      analyse(text)
        .setUps()
        .some(({ setUp }) => setUp.machine.name === 'row-drill'),
    ).toBe(false);
  });

  test.each(['range: 0 to x', 'range: -5', 'side: lft, range: 0 to 800'])(
    'a stop with %s: the machine is not judged without it',
    (bad) => {
      const text = NEUTRAL_SHOP_TEXT.replace(
        /(horizontal-heads:[^]*?side: left,) range: [^,}]*/,
        (_, before: string) => (bad.startsWith('side') ? before.replace(/side: left,$/, bad) : `${before} ${bad}`),
      );
      expect(faultsIn(text).findings).toHaveLength(1);
      expect(told(text)).toEqual(['error shop-broken']);
      expect(inWords(analyse(text).findings()[0]!.finding.message)).toContain(
        'with the horizontal head ‘end-head’ until the shop file is corrected.',
      );
    },
  );

  test('a shop that truly has no such machine is still told', () => {
    const text = NEUTRAL_SHOP_TEXT.replace(/^line-drills:[^]*?^cup-borers/m, 'cup-borers').replace(
      'rows: row-drill, ',
      '',
    );
    expect(told(text)).toContain('error cannot-be-bored');
  });

  test('the first of several faults is the one that is repeated', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('thickness: 16', 'thickness: -16').replace('pitch: 32\n', 'pitch: x\n');
    const finding = analyse(text)
      .findings()
      .find(({ finding: { rule } }) => rule === 'shop-broken')!;
    expect(inWords(finding.finding.message)).toContain(`the first in line ${lineOf(text, '-16')}. -16 mm is below`);
  });
});

describe('one wrong figure of a material', () => {
  const wrong = [
    ['board', 'board-16', 'thickness: 16', 'thickness: x'],
    ['band', 'band-1', 'thickness: 1,', 'thickness: -1,'],
    ['dowel', 'dowel-8x30', 'in-face: 12', 'in-face: 12 cm'],
  ] as const;

  test.each(wrong)(
    'of a %s: the name %s stays known, and nothing but the fault itself is told',
    (sort, name, right, bad) => {
      const text = NEUTRAL_SHOP_TEXT.replace(right, bad);
      expect(text).not.toBe(NEUTRAL_SHOP_TEXT);
      expect(faultsIn(text).findings).toHaveLength(1);
      const job = `${JOB}  c: { kind: base, width: 600, board: ${name === 'board-16' ? name : 'board-19'} }\n`;
      expect(told(text, job)).toEqual(['error shop-broken']);
      const message = inWords(analyse(text).findings()[0]!.finding.message);
      expect(message).toContain(`with the ${sort} ‘${name}’ until the shop file is corrected.`);
      // A carcass whose sizes would be a guess has none.
      expect(analyse(text).carcasses.map(({ carcass }) => carcass)).toEqual([null, null]);
    },
  );

  test('a carcass that does without it is worked out', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('thickness: 16', 'thickness: x');
    const job = `${JOB}  c: { kind: base, width: 600, board: board-19 }\n`;
    expect(analyse(text, job).carcasses.map(({ carcass }) => carcass !== null)).toEqual([false, false, true]);
  });

  test('a name that the shop truly has not is told as before', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('thickness: 19', 'thickness: x');
    expect(told(text, `${JOB}  c: { kind: base, width: 600, board: oak }\n`)).toEqual([
      'error shop-broken',
      'error board-unknown',
    ]);
  });

  test('of the only board of a shop: the built-in boards do not stand in for it', () => {
    const { shop, findings } = readShop('boards: { oak: { thickness: x } }\nhabits: { board: oak, back-board: oak }\n');
    expect(findings).toHaveLength(1);
    expect([...shop.boards.keys()]).toEqual([]);
    expect([...(shop.unread?.boards ?? [])]).toEqual(['oak']);
  });
});

describe('a shop that does not tell what it has', () => {
  const faults = [
    ['a broken line', (text: string) => text.replace('bands:\n', 'bands\n')],
    ['a tab', (text: string) => text.replace('  board-19:', '\tboard-19:')],
    ['a list where names belong', (text: string) => text.replace(/^boards:[^]*?^bands:/m, 'boards: [a, b]\nbands:')],
    ['a unit that is none', (text: string) => text.replace('unit: mm', 'unit: cm')],
  ] as const;
  const job = `${JOB}  c: { kind: base, width: 600, board: board-19, joint: screw-7x50, machines: { rows: row-drill } }\n`;

  test.each(faults)('%s: the job is told that, and nothing that follows from it', (_, spoil) => {
    const text = spoil(NEUTRAL_SHOP_TEXT);
    expect(text).not.toBe(NEUTRAL_SHOP_TEXT);
    expect(told(text, job)).toEqual(['error shop-broken']);
    expect(inWords(analyse(text, job).findings()[0]!.finding.message)).toMatch(
      /Nothing is worked out for this job until the shop file is corrected\.$/,
    );
    expect(analyse(text, job).carcasses.every(({ spec }) => spec === null)).toBe(true);
  });

  test('no figure of an unknown unit is taken for one of millimetres', () => {
    const { shop, findings } = readShop(
      'unit: cm\nboards: { oak: { thickness: 1.9 } }\nhabits: { board: oak, back-board: oak, pitch: 3.2 }\n',
    );
    expect(findings.map(({ rule }) => rule)).toEqual(['value-wrong']);
    expect(shop.boards.has('oak')).toBe(false);
    expect(shop.habits).toMatchObject({ board: 'oak', pitch: 32_000 });
  });

  test('one that cannot be had: names that the built-in shop has not are not doubted', () => {
    const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('gone') }) });
    const found = (text: string): readonly string[] =>
      engine
        .analyse('file:///x.carcass.yaml', text)
        .findings()
        .map(({ finding }) => finding.rule);
    expect(found(`${JOB}  c: { kind: base, width: 600, board: oak }\n`)).toEqual(['shop-missing']);
    expect(found(`${JOB}  c: { kind: base, width: 600, machines: { rows: old-drill } }\n`)).toEqual(['shop-missing']);
  });
});

describe('what is half typed in the head', () => {
  const own = NEUTRAL_SHOP_TEXT.replaceAll('board-', 'panel-');
  const carcass = 'carcasses:\n  a: { kind: base, width: 600, board: panel-19 }\n';
  test.each(['shop:\n', 'shop: [own.shop.yaml]\n', 'shop: "own\n'])('%j: no name of the shop is doubted', (line) => {
    const rules = told(own, `${line}${carcass}`);
    expect(rules).toHaveLength(1);
    expect(rules[0]).toMatch(/^error (?:value-wrong|yaml-syntax)$/);
  });

  test.each(['unit:\n', 'unit: [in]\n', 'unit: i\n'])('%j: no size is judged', (line) => {
    const text = `shop: own.shop.yaml\n${line}carcasses:\n  a: { kind: base, width: 24, height: 28 3/8 }\n`;
    expect(told(NEUTRAL_SHOP_TEXT, text)).toEqual(['error value-wrong']);
    expect(inWords(analyse(NEUTRAL_SHOP_TEXT, text).findings()[0]!.finding.message)).toMatch(
      /No size is checked until then\.$/,
    );
    expect(
      readShop(`${line}boards: { board-16: { thickness: 0.6 }, back-3: { thickness: 0.2 } }\n`).findings,
    ).toHaveLength(1);
  });

  test('a file that is no map at all is told so, and not what it lacks', () => {
    const rules = told(NEUTRAL_SHOP_TEXT, '- carcasses\n');
    expect(rules).toEqual(['error value-wrong', 'info shop-neutral']);
  });

  test('a misspelt `carcasses` is told once', () => {
    expect(told(NEUTRAL_SHOP_TEXT, `shop: own.shop.yaml\n${carcass.replace('carcasses', 'Carcases')}`)).toEqual([
      'error key-unknown',
    ]);
  });
});

describe('a unit that is none', () => {
  test.each(['cm', 'yards'])('of a job: %s', (unit) => {
    const text = `unit: ${unit}\ndefaults: { height: 7 }\n${JOB.replaceAll('600', '60')}`;
    expect(told(NEUTRAL_SHOP_TEXT, text)).toEqual(['error value-wrong']);
    expect(analyse(NEUTRAL_SHOP_TEXT, text).carcasses.every(({ spec }) => spec === null)).toBe(true);
  });

  test('is repaired where it means one that is', () => {
    const [one] = analyse(NEUTRAL_SHOP_TEXT, `unit: inches\n${JOB}`).findings();
    expect(one!.finding.repairs).toMatchObject([
      {
        title: { id: 'reading.write', figures: { text: 'in' } },
        changes: [{ kind: 'set', part: 'head', path: ['unit'], text: 'in' }],
        preferred: true,
      },
    ]);
  });

  test('centimetres are not taken for millimetres by a repair', () => {
    const [one] = analyse(NEUTRAL_SHOP_TEXT, `unit: cm\n${JOB}`).findings();
    expect(inWords(one!.finding.message)).toContain('multiply every bare number by 10');
    expect(one!.finding.repairs).toEqual([]);
  });
});
