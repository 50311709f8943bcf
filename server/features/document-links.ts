import { tell } from '../../shared-core/words/message.js';
import { say } from '../messages.js';
import type { DocumentLink } from 'vscode-languageserver';
import { shopNamed } from '../../shared-core/service.js';
import { named, type Names } from '../names.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** The shop file that a job names, to be opened by a click; none where it cannot be read. */
export function documentLinks(file: OpenFile, names: Names): DocumentLink[] {
  if (file.kind === 'shop') return [];
  const said = shopNamed(file.document.getText());
  const shop = said === null ? null : names.shopOf(named(file));
  if (said === null || shop === null) return [];
  const range = rangeOf(file.document, said.start, said.end);
  return [{ range, target: shop.document.uri, tooltip: tell(say.openShop(), 'mm') }];
}
