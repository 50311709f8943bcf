import { expect, test } from 'vitest';
import type { CompletionItem, Diagnostic, Hover, Location, WorkspaceEdit } from 'vscode-languageserver-protocol';
import { type Client, covered, editsOf, wordsOf, type Folder } from './client.js';
import { session } from './session.js';

const TEXT = `unit: mm
carcasses:
  tower-left: # by the window
    kind: tall
    width: 600
    doors: left
  tower-right:
    like: tower-left
    mirrored: yes
  tower-far:
    like: "tower-right"
    width: 700
`;

let client: Client;
let folder: Folder;
let uri: string;
session(async (one) => {
  ({ client, folder } = one);
  uri = folder.uri('towers.carcass.yaml');
  await client.open(uri, TEXT);
});

const at = (words: string, by: number) => ({ textDocument: { uri }, position: client.at(uri, words, by) });
const line = ({ range }: Location): string => TEXT.split('\n')[range.start.line]!.trim();

test('the name behind `like` leads to the carcass, and the carcass to all that are like it', async () => {
  const definition = await client.ask<Location[]>('textDocument/definition', at('like: tower-left', 8));
  expect(definition.map(line)).toEqual(['tower-left: # by the window']);
  const references = await client.ask<Location[]>('textDocument/references', {
    ...at('tower-left:', 3),
    context: { includeDeclaration: true },
  });
  expect(references.map(line)).toEqual(['tower-left: # by the window', 'like: tower-left']);
});

test('a carcass is renamed together with what is like it', async () => {
  const edit = await client.ask<WorkspaceEdit>('textDocument/rename', { ...at('tower-right:', 3), newName: 'mid' });
  const edits = editsOf(uri, edit);
  expect(edits.map(({ range, newText }) => [covered(TEXT, range), newText])).toEqual([
    ['tower-right', 'mid'],
    ['"tower-right"', '"mid"'],
  ]);
});

test('hovering over the name tells what it is', async () => {
  const hover = await client.ask<Hover>('textDocument/hover', at('like: tower-left', 8));
  const { value } = hover.contents as { readonly value: string };
  expect(value).toContain('Another carcass of this file, which this one is like.');
  expect(value).toMatch(/`tower-left`: carcass of kind tall, 600 × \d+ × 560 mm/);
});

test('those are offered that it can be like: neither itself nor what is like it', async () => {
  const typed = folder.uri('typed.carcass.yaml');
  await client.open(typed, TEXT.replace('like: tower-left', 'like: '));
  const position = client.at(typed, 'like: ', 6);
  const list = await client.completion(typed, position);
  const names = (list?.items ?? []).map(({ label, detail }: CompletionItem) => [label, detail]);
  expect(names).toEqual([['tower-left', expect.stringContaining('carcass of kind tall')]]);
});

test('a finding of a variant stands in the text of the other, and says whose it is', async () => {
  const other = folder.uri('other.carcass.yaml');
  const text = `carcasses:
  a: { kind: base, width: 600, height: 1104, fixed-shelves: [900] }
  b: { like: a, height: 720 }
`;
  await client.open(other, text);
  const found: readonly Diagnostic[] = await client.findings(other);
  const [one] = found.filter(({ code }) => code === 'size-impossible');
  expect(covered(text, one!.range)).toBe('900');
  expect(wordsOf(one!)).toMatch(/^In ‘b’, which is like this one: /);
});
