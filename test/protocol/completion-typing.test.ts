import { describe, expect, test } from 'vitest';
import type { CompletionItem, TextEdit } from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { readTree } from '../../shared-core/document/read.js';
import { type Client, demo, type Folder } from './client.js';
import { session } from './session.js';

let client: Client;
let folder: Folder;
let count = 0;
session((one) => {
  ({ client, folder } = one);
  folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
});

const job = `shop: shed.shop.yaml
defaults:
  back: { how: grooved, board: back-3 }
carcasses:
  sink:
    kind: base # under the window
    width: 600
    back:
      how: rebated
    fixed-shelves: [296, { at: 360, bay: 1 }]
    loose-shelves:
      - at: 328
        board: birch-19
      - 392
    panels:
      left:
        bands: { front: birch-2, back: "none" }
  "my wall": { kind: wall, width: 500 }
`;
const shop = `unit: mm
boards:
  oak-19: { thickness: 19, grain: length }
  ply:
    thickness: 18
cams:
  c15:
    guide: d8
bits: [5, 8]
line-drills:
  drill:
    fence: far
    stops:
      left-a:
        side: left
habits:
  board: oak-19
  machines: { rows: drill }
`;

/** The text with an offer taken, its later lines indented as an editor does. */
function taken(text: string, { textEdit, additionalTextEdits, insertTextFormat }: CompletionItem): string {
  const { range, newText } = textEdit as TextEdit;
  const document = TextDocument.create('file:///x', 'yaml', 0, text);
  const plain = insertTextFormat === 2 ? newText.replace('$0', '').replace(/\\([\\$}])/g, '$1') : newText;
  const line = document.getText({ start: { line: range.start.line, character: 0 }, end: range.start });
  const indented = plain.replaceAll('\n', `\n${/^\s*/.exec(line)![0]}`);
  return TextDocument.applyEdits(document, [{ range, newText: indented }, ...(additionalTextEdits ?? [])]);
}
const faults = (text: string): number => readTree(text, 'shop').problems.length;

async function opened(text: string, name: string): Promise<string> {
  count += 1;
  const uri = folder.uri(`typed-${count}.${name}.yaml`);
  await client.open(uri, text, name === 'shop' ? 'borewright-shop' : 'borewright-job');
  return uri;
}
async function offersAt(uri: string, offset: number): Promise<CompletionItem[]> {
  const document = TextDocument.create('file:///x', 'yaml', 0, client.text(uri));
  return (await client.completion(uri, document.positionAt(offset)))?.items ?? [];
}
/** Every offer at an offset, taken, leaves the text as well-formed as it was. */
async function expectSound(uri: string, offset: number): Promise<number> {
  const text = client.text(uri);
  const offers = await offersAt(uri, offset);
  const before = faults(text);
  for (const offer of offers)
    expect(
      faults(taken(text, offer)),
      `${offer.label} at ${JSON.stringify(text.slice(0, offset))}`,
    ).toBeLessThanOrEqual(before);
  return offers.length;
}

describe.each([
  ['carcass', job],
  ['shop', shop],
])('in a %s file no offer breaks the text', (name, text) => {
  test('at any key of typing it', { timeout: 60_000 }, async () => {
    const uri = await opened('', name);
    let offered = await expectSound(uri, 0);
    for (let at = 0; at < text.length; at += 1) {
      const document = TextDocument.create('file:///x', 'yaml', 0, text.slice(0, at));
      const end = document.positionAt(at);
      await client.type(uri, [{ range: { start: end, end }, text: text[at]! }]);
      offered += await expectSound(uri, at + 1);
    }
    expect(offered).toBeGreaterThan(text.length);
  });

  test('at any place of it as it is, with either line end', { timeout: 60_000 }, async () => {
    for (const whole of [text, text.replaceAll('\n', '\r\n')]) {
      const uri = await opened(whole, name);
      for (let at = 0; at <= whole.length; at += 1) await expectSound(uri, at);
    }
  });
});

/** The texts that come of the offers at the mark `|`. */
async function outcomes(marked: string): Promise<string[]> {
  const text = marked.replace('|', '');
  const uri = await opened(text, 'carcass');
  return (await offersAt(uri, marked.indexOf('|'))).map((offer) => taken(text, offer));
}
const head = 'shop: shed.shop.yaml\ncarcasses:\n';
const box = `${head}  sink:\n    kind: base\n    width: 600\n`;

describe('an offer', () => {
  test.each([
    ['replaces the whole key, and leaves its colon', `${box}    he|igt: 720\n`, `${box}    height: 720\n`],
    ['replaces the whole value', `${box}    board: wh|ite-16 # new\n`, `${box}    board: birch-19 # new\n`],
    ['replaces a value from before it', `${box}    board: |white-16\n`, `${box}    board: birch-19\n`],
    ['stays in its quotes', `${box}    board: "wh|ite-16"\n`, `${box}    board: "birch-19"\n`],
    ['closes a quote that is open', `${box}    board: 'wh|\n`, `${box}    board: 'birch-19'\n`],
    ['is put in the column of the lines beside it', `${box}   de|\n`, `${box}    depth: \n`],
    [
      'further to the left as well',
      `${head}  sink:\n      kind: base\n       |\n`,
      `${head}  sink:\n      kind: base\n      width: \n`,
    ],
    ['has a space behind a dash', `${box}    fixed-shelves:\n      -|\n`, `${box}    fixed-shelves:\n      - at: \n`],
    [
      'is there for the second item of a list too',
      `${box}    fixed-shelves:\n      - 360\n      - |\n`,
      `${box}    fixed-shelves:\n      - 360\n      - at: \n`,
    ],
    [
      'is a map in a list in brackets',
      `${box}    fixed-shelves: [360, |]\n`,
      `${box}    fixed-shelves: [360, { at:  }]\n`,
    ],
    [
      'begins a list below its key',
      `${box}    loose-shelves: |\n    depth: 560\n`,
      `${box}    loose-shelves: \n      - at: \n    depth: 560\n`,
    ],
    ['begins a map below its key', `${box}    back: |\n`, `${box}    back: \n      how: \n`],
    [
      'is a carcass below its key',
      `${head.trimEnd()} |\n`,
      `${head.trimEnd()} \n  carcass-1:\n    kind: \n    width:\n`,
    ],
    ['is the next item of a list', `${box}    fixed-shelves:\n      |\n`, `${box}    fixed-shelves:\n      - \n`],
  ])('%s', async (_, marked, wanted) => {
    // The heights are those of the last good text.
    expect(await outcomes(marked)).toContain(wanted);
  });

  test.each([
    ['behind a closed bracket', `${box}    fixed-shelves: [{ at: 360 }|]\n`],
    ['behind a value in brackets', `${box}    back: { how: grooved }|\n`],
    ['before brackets', `${box}    back: |{ how: grooved }\n`],
    ['in the indentation of a line', `${box}  |  depth: 560\n`],
    ['behind a colon with its value below', `${box}    back:|\n      how: grooved\n`],
    ['in brackets over several lines', `${box}    panels: {\n      |\n    }\n`],
    ['behind a closing quote', `${box}    board: "white-16"|\n`],
  ])('is not made %s', async (_, marked) => {
    expect(await outcomes(marked)).toEqual([]);
  });

  test('of a name that YAML would take for something else is quoted', async () => {
    folder.write(
      'odd.shop.yaml',
      'boards:\n  "oak: best": { thickness: 19 }\n  "#3": { thickness: 16 }\n  "a, b": { thickness: 3 }\n',
    );
    const [before, after] = ['shop: odd.shop.yaml\ncarcasses:\n  a: { kind: base, width: 600, board: ', ' }\n'];
    expect(await outcomes(`${before}|${after}`)).toEqual(
      ['"oak: best"', '"#3"', '"a, b"'].map((name) => `${before}${name}${after}`),
    );
  });
});
