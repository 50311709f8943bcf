import type { FileRename, WorkspaceEdit } from 'vscode-languageserver';
import { writtenInPlace } from '../../shared-core/service.js';
import { normalUri, shopUri } from '../files.js';
import type { Names } from '../names.js';
import { rangeOf } from '../text.js';
import { workspaceEdit, type DocumentEdits } from './workspace-edit.js';

/** What files asked to be renamed or moved must change in jobs, so that each `shop:` still means the same file. */
export function fileRenames(renames: readonly FileRename[], names: Names, versioned: boolean): WorkspaceEdit | null {
  const moves = renames.map(({ oldUri, newUri }) => ({ from: normalUri(oldUri), to: normalUri(newUri) }));
  const afterwards = (uri: string): string => {
    for (const { from, to } of moves) {
      if (uri === from) return to;
      // A folder takes with it what is in it.
      if (uri.startsWith(`${from}/`)) return to + uri.slice(from.length);
    }
    return uri;
  };
  const edits: DocumentEdits[] = [];
  for (const file of names.files()) {
    if (file.kind !== 'job') continue;
    const said = names.in(file).find(({ of }) => of === 'shop-file');
    const shop = said === undefined ? null : shopUri(file.uri, said.name);
    if (said === undefined || shop === null) continue;
    const job = afterwards(file.uri);
    const wanted = wayTo(job, afterwards(shop));
    if (wanted === null || shopUri(job, said.name) === afterwards(shop)) continue;
    const { document } = file;
    const range = rangeOf(document, said.start, said.end);
    edits.push({ document, edits: [{ range, newText: writtenInPlace(wanted, said, document.getText()) }] });
  }
  return workspaceEdit(edits, versioned);
}

/** The way from a job to a shop file, as `shop:` writes it. Null where no relative way leads there. */
function wayTo(jobUri: string, shopFile: string): string | null {
  const from = jobUri.split('/').slice(0, -1);
  const to = shopFile.split('/');
  if (from.slice(0, 3).join('/') !== to.slice(0, 3).join('/')) return null;
  let shared = 0;
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared += 1;
  const up = from.slice(shared).map(() => '..');
  return [...up, ...to.slice(shared).map(decodeURIComponent)].join('/');
}
