import { MarkupKind, type Position, type SignatureHelp } from 'vscode-languageserver';
import { writingHelpAt } from '../../shared-core/service.js';
import { offsetOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

/** How the length at the cursor may be written, with the bounds of its key. */
export function signatureHelp(file: OpenFile, position: Position): SignatureHelp | null {
  const help = writingHelpAt(file, offsetOf(file.document, position));
  if (help === null) return null;
  const documentation = { kind: MarkupKind.Markdown, value: help.about };
  // One signature alone: with several an editor takes the arrow keys.
  return { signatures: [{ label: help.label, documentation, parameters: [] }], activeSignature: 0 };
}
