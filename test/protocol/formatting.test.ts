import { expect, test } from 'vitest';
import type { TextEdit } from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Client, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
});

const uneven = `carcasses:
   sink:
     kind:  base # under the window
     width: 600   
     back: {how: none}
   hob:
     kind:   wall
     width: 500
`;

async function opened(text: string, name = 'carcass'): Promise<string> {
  count += 1;
  const uri = folder.uri(`layout-${count}.${name}.yaml`);
  await client.open(uri, text, name === 'shop' ? 'borewright-shop' : 'borewright-job');
  return uri;
}
async function after(uri: string, method: string, params: object): Promise<string> {
  const options = { tabSize: 2, insertSpaces: true };
  const edits = await client.ask<TextEdit[]>(method, { textDocument: { uri }, options, ...params });
  return TextDocument.applyEdits(TextDocument.create(uri, 'yaml', 1, client.text(uri)), edits);
}
const at = (line: number, character = 0) => ({ line, character });

test('a whole file', async () => {
  expect(await after(await opened(uneven), 'textDocument/formatting', {})).toBe(`carcasses:
  sink:
    kind: base # under the window
    width: 600
    back: { how: none }
  hob:
    kind: wall
    width: 500
`);
});

test('a shop file', async () => {
  const uri = await opened('boards:\n    a:   {thickness: 19}\n', 'shop');
  expect(await after(uri, 'textDocument/formatting', {})).toBe('boards:\n  a: { thickness: 19 }\n');
});

test('some lines, and no others', async () => {
  const text = uneven.replaceAll(/^ {3}/gm, '  ').replaceAll(/^ {4}/gm, '    ');
  const range = { start: at(2), end: at(2, 4) };
  const now = await after(await opened(text), 'textDocument/rangeFormatting', { range });
  expect(now).toBe(text.replace('kind:  base', 'kind: base'));
});

test('some lines that would say something else without the others are left', async () => {
  const text = 'a:\n    b: 1\n    c: 2\n';
  const range = { start: at(1), end: at(1) };
  expect(await after(await opened(text), 'textDocument/rangeFormatting', { range })).toBe(text);
});

test('some lines that cannot be moved without the others are put right within', async () => {
  const text = 'a:\n    b: {x: 1}\n    c: 2\n';
  const range = { start: at(1), end: at(1) };
  const now = await after(await opened(text), 'textDocument/rangeFormatting', { range });
  expect(now).toBe(text.replace('{x: 1}', '{ x: 1 }'));
});

test('the line that Enter has left, its indentation as it was', async () => {
  const uri = await opened(uneven);
  const now = await after(uri, 'textDocument/onTypeFormatting', { position: at(3, 5), ch: '\n' });
  expect(now).toBe(uneven.replace('kind:  base', 'kind: base'));
});

test('the line of a bracket that is closed', async () => {
  const uri = await opened(uneven);
  const now = await after(uri, 'textDocument/onTypeFormatting', { position: at(4, 22), ch: '}' });
  expect(now).toBe(uneven.replace('{how: none}', '{ how: none }'));
});

test('a text with a fault is left as it is', async () => {
  const broken = `${uneven}   : [\n`;
  const uri = await opened(broken);
  expect(await after(uri, 'textDocument/formatting', {})).toBe(broken);
  expect(await after(uri, 'textDocument/onTypeFormatting', { position: at(3, 0), ch: '\n' })).toBe(broken);
});
