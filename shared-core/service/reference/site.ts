import { referencePage } from '../../findings/reference-page.js';
import { htmlOf } from './html.js';
import { PAGE } from './messages.js';
import { keysPage } from './page.js';

/** Pages of the reference, by their file names without ending. */
export const REFERENCE_PAGES = ['job-files', 'shop-files', 'findings'] as const;
export type ReferencePage = (typeof REFERENCE_PAGES)[number];

const TITLES: Readonly<Record<ReferencePage, string>> = {
  'job-files': PAGE.job,
  'shop-files': PAGE.shop,
  findings: PAGE.findings,
};

/** One page as Markdown. */
export function referenceText(page: ReferencePage): string {
  switch (page) {
    case 'job-files':
      return keysPage('job');
    case 'shop-files':
      return keysPage('shop');
    case 'findings':
      return `${referencePage().trimEnd()}\n`;
  }
}

/** The reference as files of one folder: every page as Markdown and for a browser, which starts at index.html. */
export function referenceSite(): readonly { readonly name: string; readonly content: string }[] {
  const pages = REFERENCE_PAGES.map((page) => ({ page, text: referenceText(page) }));
  const index = [`# ${PAGE.reference}`, ...REFERENCE_PAGES.map((page) => `- [${TITLES[page]}](${page}.md)`)].join(
    '\n\n',
  );
  return [
    { name: 'index.html', content: htmlOf(index) },
    ...pages.map(({ page, text }) => ({ name: `${page}.md`, content: text })),
    ...pages.map(({ page, text }) => ({ name: `${page}.html`, content: htmlOf(text) })),
  ];
}
