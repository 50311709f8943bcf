import { describe, expect, test } from 'vitest';
import { Engine } from '../../../shared-core/engine.js';
import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral.js';
import { readShop } from '../../../shared-core/shop/read.js';

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

describe('one wrong figure of a machine', () => {
  test('a range out of bounds keeps the machine, with what of the range can be', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    setback: 20 to 80', '    setback: 20 to 600');
    const { shop, findings } = readShop(text);
    expect(findings.map(({ rule, place }) => [rule, text.slice(place.start, place.end)])).toEqual([
      ['length-impossible', '20 to 600'],
    ]);
    expect(shop.machines.get('row-drill')).toMatchObject({ kind: 'line', setback: { min: 20_000, max: 500_000 } });
    expect(told(text)).toEqual(['warning shop-broken']);
  });

  test('a range written backwards is read the right way round', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    height: 4 to 40', '    height: 40 to 4');
    expect(readShop(text).shop.machines.get('end-head')).toMatchObject({ height: { min: 4_000, max: 40_000 } });
    expect(told(text)).toEqual(['warning shop-broken']);
  });

  test('a figure that cannot be read leaves the machine out, and that is told once', () => {
    const text = NEUTRAL_SHOP_TEXT.replace('    throat: 700', '    throat: wide');
    const { shop, findings } = readShop(text);
    expect(findings).toHaveLength(1);
    expect(shop.machines.has('row-drill')).toBe(false);
    expect([...(shop.unread ?? [])]).toEqual([['row-drill', 'line']]);
    expect(told(text)).toEqual(['error shop-broken']);
    const { message } = analyse(text).findings()[0]!.finding;
    expect(message).toContain(`in line ${lineOf(text, 'throat: wide')}: ‘wide’ is not a length.`);
    expect(message).toContain('the line drill ‘row-drill’ cannot be read, and nothing is planned on it');
    // No other drill is there to plan the rows on.
    expect(
      analyse(text)
        .sheets()
        .some(({ setUp }) => setUp.machine.name === 'row-drill'),
    ).toBe(false);
  });

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
    expect(finding.finding.message).toContain(`the first in line ${lineOf(text, '-16')}: -16 mm is less than`);
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
    expect(one!.finding.repairs).toEqual([
      { title: 'Write in', changes: [{ kind: 'set', part: 'head', path: ['unit'], text: 'in' }], preferred: true },
    ]);
  });

  test('centimetres are not taken for millimetres by a repair', () => {
    const [one] = analyse(NEUTRAL_SHOP_TEXT, `unit: cm\n${JOB}`).findings();
    expect(one!.finding.message).toContain('10 times what it is now');
    expect(one!.finding.repairs).toEqual([]);
  });
});
