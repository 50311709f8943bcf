import { tell, type Message } from '../../shared-core/words/message.js';
import { say } from '../messages.js';
import { LSPErrorCodes, ResponseError, type Position, type Range, type WorkspaceEdit } from 'vscode-languageserver';
import { isFixed, writtenInPlace, type Mention } from '../../shared-core/service.js';
import { named, type Names, type Stand } from '../names.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';
import { workspaceEdit, type DocumentEdits } from './workspace-edit.js';

type Refusal = ResponseError<never>;

/** The name at a position, where it can be changed. */
export function prepareRename(
  file: OpenFile,
  position: Position,
  names: Names,
): { range: Range; placeholder: string } | Refusal | null {
  const mention = names.at(file, position);
  if (mention === null) return null;
  const why = whyNot(file, mention, names);
  if (why !== null) return refusal(why);
  return { range: rangeOf(file.document, mention.start, mention.end), placeholder: mention.name };
}

/** Writes another name wherever the thing of the name at a position is described or asked for, and changes nothing else. */
export function rename(
  file: OpenFile,
  position: Position,
  newName: string,
  names: Names,
  versioned: boolean,
): WorkspaceEdit | Refusal | null {
  const mention = names.at(file, position);
  if (mention === null) return null;
  const name = newName.trim();
  const why = whyNot(file, mention, names) ?? whyNotTo(file, mention, name, names);
  if (why !== null) return refusal(why);
  return workspaceEdit(editsByFile(names.everywhere(file, mention), name), versioned);
}

/** Null where it can be renamed. */
function whyNot(file: OpenFile, mention: Mention, names: Names): Message | null {
  const { of, name } = mention;
  if (isFixed(mention)) return say.fixedName({ name });
  if (of === 'shop-file') return say.renameFile({ name });
  const stands = names.everywhere(file, mention);
  if (!stands.some((stand) => stand.mention.gives)) {
    return names.shopOf(named(file)) === null && file.kind === 'job'
      ? say.describedElsewhere({ name })
      : say.notDescribed({ of, name });
  }
  return null;
}

function whyNotTo(file: OpenFile, mention: Mention, name: string, names: Names): Message | null {
  const { of } = mention;
  if (name === '') return say.nameEmpty({ of });
  if (/[\r\n\t]/.test(name)) return say.nameOfLines();
  if (name === 'none') return say.nameNone();
  if (name === mention.name) return null;
  const taken = names.everywhere(file, { ...mention, name }).some((stand) => stand.mention.gives);
  return taken ? say.nameTaken({ of, name }) : null;
}

/** By URI: every question for a file that is not open makes another document of it. */
function editsByFile(stands: readonly Stand[], name: string): readonly DocumentEdits[] {
  const byFile = new Map<string, DocumentEdits>();
  for (const { file, mention } of stands) {
    const known = byFile.get(file.uri) ?? { document: file.document, edits: [] };
    const { document } = known;
    known.edits.push({
      range: rangeOf(document, mention.start, mention.end),
      newText: writtenInPlace(name, mention, document.getText()),
    });
    byFile.set(file.uri, known);
  }
  return [...byFile.values()];
}

function refusal(why: Message): Refusal {
  return new ResponseError(LSPErrorCodes.RequestFailed, tell(why, 'mm'));
}
