import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect } from 'vitest';
import type { Paper } from '../../../shared-core/papers/paper.js';
import { PAGE_SIZES, type PageName } from '../../../shared-core/papers/render/page-size.js';
import { asPdf } from '../../../shared-core/papers/render/pdf/pdf.js';

// Read back with PDF.js, which shares nothing with the library that writes the files.
const library = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));
const face = (name: string): Uint8Array => readFileSync(join(library, 'standard_fonts', `LiberationSans-${name}.ttf`));
export const fonts = { regular: face('Regular'), bold: face('Bold') };
const POINTS = 72 / 25.4;

export interface Word {
  readonly text: string;
  /** Millimetres from the top left corner. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

export const print = (paper: Paper<string>, page: PageName = 'a4'): Promise<Uint8Array> =>
  asPdf(paper, { page: PAGE_SIZES[page], fonts, language: 'en' });

export async function readBack(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const task = getDocument({ data: Uint8Array.from(bytes), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [, , width, height] = page.view as [number, number, number, number];
    const { items } = await page.getTextContent({ disableNormalization: true });
    const words = items.flatMap((item): Word[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as [number, number, number, number, number, number];
      const size = Math.hypot(a, b);
      const upright = Math.abs(b) > Math.abs(a);
      // Capitals and figures, which is what these papers are made of: from the base line up to their height.
      const up = size * 0.7;
      const box = upright
        ? { left: x - up, right: x, bottom: y, top: y + item.width }
        : { left: x, right: x + item.width, bottom: y, top: y + up };
      const top = height - box.top;
      return [
        {
          text: item.str,
          left: box.left / POINTS,
          right: box.right / POINTS,
          top: top / POINTS,
          bottom: (height - box.bottom) / POINTS,
        },
      ];
    });
    pages.push({ width: width / POINTS, height: height / POINTS, words });
  }
  await task.destroy();
  return pages;
}

export const textOf = (pages: readonly ReadPage[]): string =>
  pages.flatMap(({ words }) => words.map(({ text }) => text)).join(' ');

/** Less than this lies on each other by rounding alone. */
const TOUCH = 0.15;

/**
 * No text leaves its page, and none lies on another.
 * @param of what is printed, to be told where it does
 */
export function expectClear({ words, width, height }: ReadPage, of = ''): void {
  const out = words.filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height);
  expect(
    out.map(({ text }) => text),
    of,
  ).toEqual([]);
  const clashes = words.flatMap((a, i) =>
    words.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      return across > TOUCH && down > TOUCH ? [`‘${a.text}’ lies on ‘${b.text}’`] : [];
    }),
  );
  expect(clashes, of).toEqual([]);
}
