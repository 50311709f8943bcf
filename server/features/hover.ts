import type { Hover, Position } from 'vscode-languageserver';
import { MarkupKind } from 'vscode-languageserver';
import { explain, tell } from '../../shared-core/service.js';
import type { ClientAbilities } from '../abilities.js';
import { say } from '../messages.js';
import { offsetOf, rangeOf } from '../text.js';
import type { OpenFile } from '../workspace.js';

type Abilities = Pick<ClientAbilities, 'pictures' | 'reference'>;

/**
 * What stands under the pointer: the key's meaning, the value's, and the panels, rows and bores that come of it.
 */
export function hover(file: OpenFile, position: Position, { pictures, reference }: Abilities): Hover | null {
  const said = explain(file, offsetOf(file.document, position), pictures);
  if (said === null) return null;
  const { words, about, reference: place } = said;
  const more =
    place === null || reference === null
      ? ''
      : `\n\n[${tell(say.inReference(), 'mm')}](${reference.link(place.page, place.anchor)})`;
  return {
    contents: { kind: MarkupKind.Markdown, value: `${words}${more}` },
    ...(about !== null && { range: rangeOf(file.document, about.start, about.end) }),
  };
}
