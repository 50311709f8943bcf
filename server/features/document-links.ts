import type { DocumentLink } from 'vscode-languageserver';
import { cutJob } from '../../shared-core/document/cut.js';
import { mentionsInHead } from '../../shared-core/mentions/files.js';
import { named, type Names } from '../names.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** The shop file that a job names, to be opened by a click; none where it cannot be read. */
export function documentLinks(file: OpenFile, names: Names): DocumentLink[] {
  if (file.kind === 'shop') return [];
  const said = mentionsInHead(cutJob(file.document.getText())).find(({ of }) => of === 'shop-file');
  const shop = said === undefined ? null : names.shopOf(named(file));
  if (said === undefined || shop === null) return [];
  const range = rangeOf(file.document, said.start, said.end);
  return [{ range, target: shop.document.uri, tooltip: 'Open the shop file' }];
}
