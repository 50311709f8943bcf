import { tell, type Message } from '../../shared-core/words/message.js';
import { say } from '../messages.js';
import { LSPErrorCodes, ResponseError, type Position, type Range, type WorkspaceEdit } from 'vscode-languageserver';
import type { TextDocumentEdit, TextEdit } from 'vscode-languageserver';
import { isFixed, writtenInPlace, type Mention } from '../../shared-core/service.js';
import { named, type NamedFile, type Names, type Stand } from '../names.js';
import { rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

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
  const stands = names.everywhere(file, mention);
  return workspaceEdit(editsByFile(stands, name), versioned);
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

function editsByFile(stands: readonly Stand[], name: string): ReadonlyMap<NamedFile, TextEdit[]> {
  const edits = new Map<NamedFile, TextEdit[]>();
  for (const { file, mention } of stands) {
    const { document } = file;
    const edit = {
      range: rangeOf(document, mention.start, mention.end),
      newText: writtenInPlace(name, mention, document.getText()),
    };
    const kept = [...edits.keys()].find(({ uri }) => uri === file.uri) ?? file;
    edits.set(kept, [...(edits.get(kept) ?? []), edit]);
  }
  return edits;
}

/** Edits of several files, as the client can take them. */
export function workspaceEdit(edits: ReadonlyMap<NamedFile, TextEdit[]>, versioned: boolean): WorkspaceEdit {
  const files = [...edits];
  if (!versioned)
    return {
      changes: Object.fromEntries(
        files.map(
          ([
            {
              document: { uri },
            },
            list,
          ]) => [uri, list],
        ),
      ),
    };
  return {
    documentChanges: files.map(([{ document }, list]): TextDocumentEdit => {
      // A file that is not open has no version.
      const version = document.version === 0 ? null : document.version;
      return { textDocument: { uri: document.uri, version }, edits: list };
    }),
  };
}

function refusal(why: Message): Refusal {
  return new ResponseError(LSPErrorCodes.RequestFailed, tell(why, 'mm'));
}
