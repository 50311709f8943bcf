import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CancellationTokenSource, type TextDocumentContentChangeEvent } from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { updated } from '../../server/text.js';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
});

const pieces = fc.constantFrom(
  '',
  'x',
  ' ',
  '\n',
  '\r\n',
  '\r',
  '    height: 730\n',
  ':',
  '  more: { kind: wall, width: 500 }\n',
  '\u{1F6AA}',
  '#',
);
// Lines and columns past the end as well: what a client sends is not to be trusted.
const edits = fc.array(
  fc.record({
    start: fc.record({ line: fc.nat(130), character: fc.nat(40) }),
    lines: fc.oneof(
      { weight: 3, arbitrary: fc.constant(0) },
      { weight: 2, arbitrary: fc.nat(3) },
      { weight: 1, arbitrary: fc.nat(60) },
    ),
    characters: fc.nat(20),
    text: pieces,
  }),
  { minLength: 1, maxLength: 12 },
);

test('after any run of small changes the server has the text that the editor has', async () => {
  let run = 0;
  await fc.assert(
    fc.asyncProperty(edits, async (changes) => {
      run += 1;
      const uri = folder.uri(`small-${run}.carcass.yaml`);
      await client.open(uri, demo('kitchen.carcass.yaml'));
      for (const { start, lines, characters, text } of changes) {
        const end = { line: start.line + lines, character: (lines === 0 ? start.character : 0) + characters };
        await client.type(uri, [{ range: { start, end }, text }] satisfies TextDocumentContentChangeEvent[]);
      }
      const found = await client.findings(uri);
      const symbols = await client.symbols(uri);
      const text = client.text(uri);
      await client.close(uri);
      expect(found).toEqual(await client.open(uri, text));
      expect(symbols).toEqual(await client.symbols(uri));
      await client.close(uri);
    }),
    // A failure is told as it is: to look for a smaller one through a server takes minutes.
    { numRuns: 10, endOnFailure: true },
  );
});

test('changes are made as on a text without any bookkeeping, past its end as well', () => {
  fc.assert(
    fc.property(edits, (changes) => {
      let document = TextDocument.create('file:///x', 'yaml', 0, demo('studio.carcass.yaml'));
      let text = document.getText();
      for (const { start, lines, characters, text: piece } of changes) {
        const end = { line: start.line + lines, character: (lines === 0 ? start.character : 0) + characters };
        document = updated(document, [{ range: { start, end }, text: piece }], document.version + 1);
        const plain = TextDocument.create('file:///x', 'yaml', 0, text);
        text = text.slice(0, plain.offsetAt(start)) + piece + text.slice(plain.offsetAt(end));
        expect(document.getText()).toBe(text);
      }
      const plain = TextDocument.create('file:///x', 'yaml', 0, text);
      for (const { start } of changes) {
        expect(document.offsetAt(start)).toBe(plain.offsetAt(start));
        const offset = plain.offsetAt(start);
        expect(document.positionAt(offset)).toEqual(plain.positionAt(offset));
      }
    }),
    { numRuns: 1000 },
  );
});

test('a burst of keys ends with the findings of the last text', async () => {
  const uri = folder.uri('burst.carcass.yaml');
  const text = 'carcasses:\n  a:\n    kind: base\n    width: 600\n';
  await client.open(uri, text);
  const at = client.at(uri, '600');
  for (let key = 0; key < 60; key += 1) {
    await client.type(uri, [
      { range: { start: at, end: { line: at.line, character: at.character + 3 } }, text: String(700 + key) },
    ]);
  }
  await client.type(uri, [{ range: { start: at, end: { line: at.line, character: at.character + 3 } }, text: '-50' }]);
  const found = await client.findings(uri);
  expect(found.map(({ code }) => code)).toContain('length-impossible');
  expect(found.find(({ code }) => code === 'length-impossible')?.message).toContain('-50');
});

test('a request about a text that has moved on, or that is cancelled, is refused', async () => {
  const uri = folder.uri('moving.carcass.yaml');
  await client.open(uri, 'carcasses:\n  a:\n    kind: base\n    width: 600\n');
  const hover = client.hover(uri, { line: 3, character: 6 });
  await client.type(uri, [{ text: 'carcasses:\n  a:\n    kind: wall\n    width: 600\n' }]);
  const outcome = await hover.then(
    (value) => value,
    (error: unknown) => (error as { code: number }).code,
  );
  // ContentModified, or, where the answer was quicker than the change, an answer.
  expect(outcome === -32801 || typeof outcome === 'string').toBe(true);
  await client.findings(uri);
});

test('set-ups that are cancelled, or whose text goes on, while their order is sought are not answered', async () => {
  const carcasses = Array.from(
    { length: 60 },
    (_, i) =>
      `  box-${i}:\n    kind: ${i % 3 === 0 ? 'tall' : 'base'}\n    width: ${500 + i}\n    dividers: [${200 + i}]\n`,
  );
  const uri = folder.uri('ordered.carcass.yaml');
  await client.open(uri, `carcasses:\n${carcasses.join('')}`);
  const outcome = (asked: Promise<unknown>): Promise<unknown> =>
    asked.then(
      () => 'answered',
      (error: unknown) => (error as { code: number }).code,
    );
  const rest = (): Promise<void> => new Promise((done) => setTimeout(done, 40));
  const ask = (source = new CancellationTokenSource()): Promise<unknown> =>
    outcome(client.connection.sendRequest('borewright/setUps', { uri }, source.token));
  const source = new CancellationTokenSource();
  const cancelled = ask(source);
  // Long enough for the server to have begun, and far from enough to be done.
  await rest();
  source.cancel();
  expect(await cancelled).toBe(-32800);
  const outdated = ask();
  await rest();
  await client.type(uri, [
    { range: { start: { line: 3, character: 11 }, end: { line: 3, character: 14 } }, text: '640' },
  ]);
  expect(await outdated).toBe(-32801);
  expect(await ask()).toBe('answered');
  await client.close(uri);
});

test('a long job is told of before all of it is worked out, and questions are answered meanwhile', async () => {
  const carcasses = Array.from(
    { length: 250 },
    (_, i) => `  box-${i}:\n    kind: tall\n    width: ${i === 3 ? 5 : 400 + i}\n    fixed-shelves: [${500 + i}]\n`,
  );
  const text = `shop: shed.shop.yaml\ncarcasses:\n${carcasses.join('')}`;
  const uri = folder.uri('long.carcass.yaml');
  await client.opened(uri, text);
  const lines = (): readonly number[] =>
    client.diagnostics.get(uri)?.diagnostics.map(({ range }) => range.start.line) ?? [];
  await client.until(() => lines().length > 0, 'the first findings');
  expect(lines()).toEqual([16]);
  expect(client.changed.some((one) => one.uri === uri && one.complete)).toBe(false);
  // Another document, and this one.
  const short = await client.open(folder.uri('short.carcass.yaml'), 'carcasses:\n  a: { kind: base, width: 5 }\n');
  expect(short).not.toEqual([]);
  expect(client.changed.some((one) => one.uri === uri && one.complete)).toBe(false);
  expect(await client.hover(uri, client.at(uri, 'width: 401'))).toContain('width');
  expect(client.changed.some((one) => one.uri === uri && one.complete)).toBe(false);
  await client.close(folder.uri('short.carcass.yaml'));
  await client.close(uri);
});
