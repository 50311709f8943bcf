import { expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PapersReply } from '../../shared-core/papers/asked.js';
import { CAPABILITIES, Client, demo, Folder } from './client.js';
import { inEnglish } from './no-english.js';

const JOB = 'carcasses:\n  corner:\n    kind: base\n    width: 8\n    hight: 720\n';

/** What a client of this language is told of a job with two faults, and offered for it. */
async function toldIn(locale: string): Promise<{
  readonly found: readonly string[];
  readonly titles: readonly string[];
  readonly hover: string;
  readonly width: string;
}> {
  const client = await Client.start(CAPABILITIES, undefined, undefined, null, undefined, locale);
  const folder = new Folder();
  try {
    const uri = folder.uri('job.carcass.yaml');
    const found = await client.open(uri, JOB);
    const { range } = found.find(({ code }) => code === 'key-unknown')!;
    const titles = (await client.codeActions(uri, range)).map(({ title }) => title);
    await client.open(uri, JOB.replace('width: 8\n    hight', 'width: 600.5\n    height'));
    const hover = (await client.hover(uri, { line: 1, character: 4 }))!;
    const width = (await client.hover(uri, { line: 3, character: 6 }))!;
    return {
      found: found.map(({ message }) => (typeof message === 'string' ? message : message.value)),
      titles,
      hover,
      width,
    };
  } finally {
    expect(await client.stop()).toBe(0);
    folder.close();
  }
}

test.each([
  ['en-GB', 'is below the minimum', 'is not a key of a carcass', 'Rename to height', 'panels', 'Overall width'],
  [
    'de-AT',
    'ist unter dem Mindestmaß',
    'ist kein Schlüssel eines Korpus',
    'In height umbenennen',
    'Platten',
    'Gesamtbreite',
  ],
  [
    'fr',
    'est sous le minimum',
    'n’est pas une clé d’un caisson',
    'Renommer en height',
    'panneaux',
    'Largeur hors tout',
  ],
  ['pt-br', 'is below the minimum', 'is not a key of a carcass', 'Rename to height', 'panels', 'Overall width'],
])('a client of %s is told in its language', async (locale, below, key, title, panels, about) => {
  const { found, titles, hover, width } = await toldIn(locale);
  expect(found.some((words) => words.includes(below) && words.includes('8 mm'))).toBe(true);
  expect(found.some((words) => words.includes(key) && words.includes('hight'))).toBe(true);
  expect(titles).toContain(title);
  expect(hover).toContain(panels);
  expect(width).toContain(about);
  // Figures that may be taken into the file are written as it takes them.
  expect(hover).toContain('600.5');
});

/** Every text that a reply shows to a person; what a program reads of it is left out. */
function shownBy(reply: unknown): readonly string[] {
  if (typeof reply === 'string') return [reply];
  if (typeof reply !== 'object' || reply === null) return [];
  return Object.entries(reply).flatMap(([key, value]) => (FOR_PROGRAMS.has(key) ? [] : shownBy(value)));
}
const FOR_PROGRAMS = new Set(
  'uri newText data edit textEdit textEditText insertText filterText sortText code key bores bore title note'.split(
    ' ',
  ),
);

/** What the server says of a whole job and its shop, wherever one points. */
async function everythingSaidIn(locale: string): Promise<readonly string[]> {
  const client = await Client.start(CAPABILITIES, undefined, undefined, null, undefined, locale);
  const folder = new Folder();
  const replies: unknown[] = [];
  const ask = async (method: string, params: unknown): Promise<void> =>
    void replies.push(await client.ask(method, params));
  try {
    const shop = folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
    for (const name of ['kitchen.carcass.yaml', 'shed.shop.yaml']) {
      const uri = name.includes('shop') ? shop : folder.uri(name);
      const text = demo(name);
      const textDocument = { uri };
      replies.push(await client.open(uri, text, name.includes('shop') ? 'borewright-shop' : 'borewright-job'));
      for (const method of ['borewright/setUps', 'borewright/shopView', 'borewright/box'])
        await ask(method, { uri, what: 'wall', position: null, carcass: null });
      await ask('borewright/drawing', {
        uri,
        view: 'all-panels',
        position: null,
        carcass: null,
        panel: null,
        medium: 'screen',
      });
      await ask('borewright/drawing', {
        uri,
        view: 'panel',
        position: null,
        carcass: null,
        panel: null,
        medium: 'screen',
      });
      for (const method of ['textDocument/codeLens', 'textDocument/documentSymbol'])
        await ask(method, { textDocument });
      for (const [line, words] of text.split('\n').entries()) {
        const position = { line, character: words.search(/\S|$/) + 1 };
        await ask('textDocument/hover', { textDocument, position });
        if (line % 4 === 0)
          await ask('textDocument/completion', { textDocument, position: { line, character: words.length } });
      }
    }
    return replies.flatMap(shownBy);
  } finally {
    expect(await client.stop()).toBe(0);
    folder.close();
  }
}

test.each(['de', 'fr'])('nothing that the server says in %s is English', async (locale) => {
  const said = await everythingSaidIn(locale);
  expect(said.length).toBeGreaterThan(1000);
  expect(inEnglish(said)).toEqual([]);
});

test('papers are written in the language of the editor', async () => {
  const client = await Client.start(CAPABILITIES, undefined, undefined, null, undefined, 'de');
  const folder = new Folder();
  try {
    folder.write('shed.shop.yaml', demo('shed.shop.yaml'));
    const uri = folder.write('kitchen.carcass.yaml', demo('kitchen.carcass.yaml'));
    await client.open(uri, demo('kitchen.carcass.yaml'));
    const wanted = { uri, folder: folder.uri('out'), only: ['cut-list'], as: ['text'], page: 'a4', seconds: null };
    const reply = await client.ask<PapersReply>('borewright/papers', wanted);
    expect(reply.kind).toBe('written');
    expect(readFileSync(join(folder.path, 'out', 'kitchen-cut-list.txt'), 'utf8')).toMatch(
      /^Zuschnittliste: .*\d Stück, \d+,\d\d m².*Bekantung/s,
    );
  } finally {
    expect(await client.stop()).toBe(0);
    folder.close();
  }
});
