import { expect, test } from 'vitest';
import type { DocumentSymbol, Range } from 'vscode-languageserver-protocol';
import { type Client, covered, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
});

function holds(outer: Range, inner: Range): boolean {
  const before = (a: Range['start'], b: Range['start']): boolean =>
    a.line < b.line || (a.line === b.line && a.character <= b.character);
  return before(outer.start, inner.start) && before(inner.end, outer.end);
}
function checkRanges(symbols: readonly DocumentSymbol[]): void {
  for (const { range, selectionRange, children } of symbols) {
    expect(holds(range, selectionRange)).toBe(true);
    for (const child of children ?? []) expect(holds(range, child.selectionRange)).toBe(true);
    checkRanges(children ?? []);
  }
}

test('carcasses with their sizes, and under each its panels', async () => {
  const uri = folder.uri('kitchen.carcass.yaml');
  const text = demo('kitchen.carcass.yaml');
  await client.open(uri, text);
  const symbols = await client.symbols(uri);
  expect(symbols.map(({ name }) => name)).toEqual(
    [...text.matchAll(/^ {2}([a-z-]+):$/gm)].map((match) => match[1]).filter((name) => name !== 'band'),
  );
  const sink = symbols.find(({ name }) => name === 'sink')!;
  expect(sink.detail).toBe('base 600 × 720 × 560 mm');
  expect(covered(text, sink.selectionRange)).toBe('sink');
  expect(sink.children!.map(({ name }) => name)).toEqual([
    'left',
    'right',
    'bottom',
    'rail-front',
    'rail-back',
    'plinth',
  ]);
  const shelf = symbols.find(({ name }) => name === 'larder')!.children!.find(({ name }) => name === 'shelf-1')!;
  expect(covered(text, shelf.range)).toBe('712');
  checkRanges(symbols);
});

test('a broken carcass keeps its name', async () => {
  const uri = folder.uri('broken.carcass.yaml');
  await client.open(uri, 'carcasses:\n  a:\n    kind base\n  b:\n    kind: wall\n    width: 500\n');
  const symbols = await client.symbols(uri);
  expect(symbols.map(({ name }) => name)).toEqual(['a', 'b']);
  checkRanges(symbols);
});

test('a shop: its sections, and what they name', async () => {
  const uri = folder.uri('shed.shop.yaml');
  await client.open(uri, demo('shed.shop.yaml'), 'borewright-shop');
  const symbols = await client.symbols(uri);
  expect(symbols.find(({ name }) => name === 'line-drills')?.children?.map(({ name }) => name)).toEqual(['row-drill']);
  checkRanges(symbols);
});
