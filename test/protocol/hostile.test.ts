import { describe, expect, test } from 'vitest';
import { HOSTILE } from '../hostile-texts.js';
import { type Client, type Folder, wordsOf } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
session((one) => {
  ({ client, folder } = one);
});

const SIZE = 3000;
const WHERE = ['hover', 'completion', 'definition', 'references', 'documentHighlight', 'prepareRename'].map(
  (what) => `textDocument/${what}`,
);
const WHOLE = ['documentSymbol', 'codeLens', 'documentLink', 'foldingRange'].map((what) => `textDocument/${what}`);

const KINDS = [
  { kind: 'job', ending: '.carcass.yaml' },
  { kind: 'shop', ending: '.shop.yaml' },
] as const;

describe.each(KINDS)('a $kind file', ({ kind, ending }) => {
  test.each(HOSTILE)('of $name has its faults in it, and every question is answered', async ({ name, text }) => {
    const uri = folder.uri(`${name.replaceAll(/\W+/g, '-')}${ending}`);
    const whole = text(SIZE);
    const lines = whole.split(/\r\n|\n|\r/);
    const last = { line: lines.length - 1, character: lines.at(-1)!.length };
    const found = await client.open(uri, whole, `borewright-${kind}`);
    for (const one of found) {
      expect(one.range.end.line).toBeLessThan(lines.length);
      expect(one.range.end.character).toBeLessThanOrEqual(lines[one.range.end.line]!.length);
      expect(wordsOf(one)).not.toBe('');
      expect(['internal-fault', 'analysis-stopped']).not.toContain(one.code);
    }
    const textDocument = { uri };
    const middle = { line: Math.floor(lines.length / 2), character: 4 };
    for (const position of [{ line: 0, character: 0 }, middle, last]) {
      for (const what of WHERE) {
        // That there is nothing to rename is an answer too.
        const asked = client.ask(what, { textDocument, position, context: { includeDeclaration: true } });
        await (what.endsWith('Rename') ? asked.catch(() => null) : asked);
      }
      await client.ask('textDocument/selectionRange', { textDocument, positions: [position] });
      await client.drawing({ uri, position });
    }
    for (const what of WHOLE) await client.ask(what, { textDocument });
    const range = { start: { line: 0, character: 0 }, end: last };
    await client.ask('textDocument/inlayHint', { textDocument, range });
    await client.codeActions(uri, range, ['quickfix', 'source.fixAll']);
    await client.ask('borewright/setUps', { uri });
    await client.close(uri);
  });
});
