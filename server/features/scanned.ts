import { nearestName, outlineOf, readCode, tell, type ScannedReply } from '../../shared-core/service.js';
import { baseName } from '../files.js';
import { say } from '../messages.js';
import type { Names } from '../names.js';
import { rangeOf } from '../text.js';
import type { Workspace } from '../workspace.js';

/** The panel that a label's code leads back to, in every job file of that name that is known; open texts go before the disk's. */
export function scanned(text: string, names: Names, workspace: Workspace): ScannedReply {
  const code = readCode(text);
  if (code === null) return { kind: 'nothing', reason: tell(say.noCode(), 'mm') };
  const { file, carcass, panel } = code;
  const jobs = names.files().filter(({ kind, uri }) => kind === 'job' && baseName(uri) === file);
  if (jobs.length === 0) {
    const known = names.files().flatMap(({ kind, uri }) => (kind === 'job' ? [baseName(uri)] : []));
    return { kind: 'nothing', reason: tell(say.noCodedJob({ file, near: nearestName(file, known) }), 'mm') };
  }
  const places = jobs.flatMap(({ document }) => {
    const one = workspace.lookAt(document);
    if (workspace.document(document.uri) === undefined) workspace.close(document.uri);
    const found = one === null ? undefined : outlineOf(one).find(({ name }) => name === carcass);
    const own = found?.within.find(({ name }) => name === panel)?.own;
    return own === undefined ? [] : [{ uri: document.uri, range: rangeOf(document, own.start, own.end) }];
  });
  if (places.length === 0) return { kind: 'nothing', reason: tell(say.noCodedPanel(code), 'mm') };
  return { kind: 'found', carcass, panel, places };
}
