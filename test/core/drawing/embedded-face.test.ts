import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import * as fontkit from 'fontkit';
import { expect, test } from 'vitest';
import { faceCutter } from '../../../server/face-subset.js';
import { boreMapScene } from '../../../shared-core/drawing/bore-map/bore-map.js';
import { allPanelsScene } from '../../../shared-core/drawing/bore-map/all-panels.js';
import { EMBEDDED } from '../../../shared-core/drawing/render/embedded-face.js';
import { toSvg } from '../../../shared-core/drawing/render/svg.js';
import { EM, WIDTHS } from '../../../shared-core/drawing/scene/letter-widths.js';
import { CAP_HEIGHT, textWidth } from '../../../shared-core/drawing/scene/lettering.js';
import { papersOf } from '../../../shared-core/service.js';
import { asHtml } from '../../../shared-core/papers/render/html.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { analyse } from '../findings/jobs.js';
import { fonts } from '../papers/read-pdf.js';
import { demoShop, demoText, drawnOf } from './demo.js';
import { handMade, unmatched } from './panels.js';
import { all, hasClass, readXml, type Element } from './read-xml.js';

const { resolve } = createRequire(import.meta.url);
const wasm = readFileSync(join(dirname(resolve('harfbuzzjs')), 'harfbuzz-subset.wasm'));
const face = faceCutter(fonts, new WebAssembly.Module(Uint8Array.from(wasm)));
const fontIn = (bytes: Uint8Array): fontkit.Font => fontkit.create(Buffer.from(bytes)) as fontkit.Font;
const whole = { regular: fontIn(fonts.regular), bold: fontIn(fonts.bold) };

/** The faces that a style sheet brings along, read with a library that did not write them. */
function embedded(style: string): Readonly<Record<'regular' | 'bold', fontkit.Font | undefined>> {
  const found = [...style.matchAll(/@font-face\{font-family:'([^']+)';font-weight:(\d+);src:url\(([^)]+)\)/g)];
  const read = (weight: string): fontkit.Font | undefined => {
    const [one, ...more] = found.filter(([, name, its]) => name === EMBEDDED && its === weight);
    expect(more).toEqual([]);
    return one === undefined ? undefined : fontIn(Buffer.from(one[3]!.replace('data:font/ttf;base64,', ''), 'base64'));
  };
  return { regular: read('400'), bold: read('700') };
}

/** Of a table of letters in OpenType’s format 4. */
const END_OF_TABLE = 0xffff;

/** Every text has its letters in the face that is embedded for it, as wide as they were measured. */
function expectLettered(root: Element, faces: ReturnType<typeof embedded>): void {
  const used = { regular: new Set<string>(), bold: new Set<string>() };
  const advanceOf = (weight: 'regular' | 'bold', text: string): number =>
    Array.from(text, (letter) => faces[weight]!.glyphForCodePoint(letter.codePointAt(0)!).advanceWidth).reduce(
      (sum, each) => sum + each,
      0,
    );
  const off: string[] = [];
  for (const one of all(root, ({ tag, text }) => tag === 'text' && text !== '')) {
    const weight = hasClass(one, 'strong') ? 'bold' : 'regular';
    for (const letter of one.text) used[weight].add(letter);
    const size = Number(one.attributes['font-size']);
    const width = (advanceOf(weight, one.text) / EM) * size;
    if (Math.abs(width - textWidth(one.text, size * CAP_HEIGHT, weight === 'bold')) > 1e-6 * size) off.push(one.text);
    // What a reader is told agrees with what it has: nothing is drawn closer or wider.
    const isPlain = !/^\s|\s$|\s\s/.test(one.text);
    if (isPlain && Math.abs(Number(one.attributes['textLength']) - width) > 0.002 * size) off.push(one.text);
  }
  expect(off).toEqual([]);
  for (const weight of ['regular', 'bold'] as const) {
    const font = faces[weight];
    for (const letter of used[weight]) {
      const code = letter.codePointAt(0)!;
      expect(font!.hasGlyphForCodePoint(code), letter).toBe(true);
      const [cut, from] = [font!, whole[weight]].map((one) => one.glyphForCodePoint(code));
      expect(cut!.advanceWidth, letter).toBe(from!.advanceWidth);
      expect(cut!.path.toSVG(), letter).toBe(from!.path.toSVG());
    }
    // Nothing but what is used: a face in a file of one panel is small.
    const had = (font?.characterSet ?? [])
      .filter((code) => code !== END_OF_TABLE)
      .map((code) => String.fromCodePoint(code));
    expect(had.filter((letter) => !used[weight].has(letter))).toEqual([]);
  }
}

test('an SVG brings along the letters that it uses, as wide as they were measured', () => {
  const shop = demoShop();
  const named = { ...handMade([unmatched]), name: 'Szafka pod zlew – Łódź, Çeşme, Đồng' };
  const drawings = [
    boreMapScene(handMade([unmatched]), 'left')!,
    allPanelsScene(named),
    ...drawnOf(demoText('kitchen.carcass.yaml'), shop)
      .slice(0, 3)
      .map((drawn) => boreMapScene(drawn, drawn.carcass.panels[0]!.key)!),
  ];
  for (const scene of drawings) {
    const svg = toSvg(scene, { face });
    const root = readXml(svg);
    const [style] = all(root, ({ tag }) => tag === 'style');
    if (scene !== drawings[1]) expectLettered(root, embedded(style!.text));
    expect(style!.text).toContain(`.text{font-family:'${EMBEDDED}'`);
    expect(svg.length - toSvg(scene).length).toBeLessThan(40_000);
    expect(toSvg(scene, { face })).toBe(svg);
  }
});

test('a page brings them along once for all of its drawings', async () => {
  const job = analyse(readFileSync(join('test', 'demo', 'seeds.carcass.yaml'), 'utf8'), {
    'yard.shop.yaml': readFileSync(join('test', 'demo', 'yard.shop.yaml'), 'utf8'),
  });
  const paper = (await papersOf(job, coverSolver)('bore-maps'))!;
  const page = asHtml(paper, face);
  expect(page.match(/@font-face/g)).toHaveLength(2);
  const faces = embedded(page);
  const drawings = [...page.matchAll(/<svg[\s\S]*?<\/svg>/g)].map(([svg]) => readXml(svg));
  expect(drawings.length).toBeGreaterThan(3);
  const together: Element = { tag: 'g', attributes: {}, children: drawings, text: '' };
  expectLettered(together, faces);
});

test('the widths that drawings are laid out by are those of the face', () => {
  const listed = WIDTHS.flatMap(([regular, bold, letters]) =>
    Array.from(letters, (letter) => ({ letter, regular, bold })),
  );
  expect(whole.regular.unitsPerEm).toBe(EM);
  expect(new Set(listed.map(({ letter }) => letter)).size).toBe(listed.length);
  for (const { letter, regular, bold } of listed) {
    const code = letter.codePointAt(0)!;
    expect(whole.regular.hasGlyphForCodePoint(code) && whole.bold.hasGlyphForCodePoint(code), letter).toBe(true);
    expect([regular, bold], letter).toEqual([
      whole.regular.glyphForCodePoint(code).advanceWidth,
      whole.bold.glyphForCodePoint(code).advanceWidth,
    ]);
  }
  // Letters of the languages of Europe, by the alphabets of ISO/IEC 8859-1, -2, -4, -5, -7, -9, -10 and -13.
  for (const part of ['1', '2', '4', '5', '7', '9', '10', '13']) {
    const decoder = new TextDecoder(`iso-8859-${part}`);
    for (let byte = 0xa1; byte <= 0xff; byte += 1) {
      const letter = decoder.decode(Uint8Array.of(byte));
      if (/^\p{L}$/u.test(letter) && whole.regular.hasGlyphForCodePoint(letter.codePointAt(0)!))
        expect(
          listed.some((one) => one.letter === letter),
          letter,
        ).toBe(true);
    }
  }
});

test('a letter that the face lacks does no harm', () => {
  const svg = toSvg(boreMapScene({ ...handMade(), name: '木の箱' }, 'left')!, { face });
  expect(readXml(svg).tag).toBe('svg');
});
