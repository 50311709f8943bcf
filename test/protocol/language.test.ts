import { expect, test } from 'vitest';
import { CAPABILITIES, Client, Folder } from './client.js';

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
