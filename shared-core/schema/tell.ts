import type { Change, Finding, RelatedPlace, Repair } from '../document/finding.js';
import type { Place } from '../document/place.js';
import type { TextProblem } from '../document/tree.js';
import type { Message } from '../words/message.js';

/** An error with no related places and no repairs unless they are given. */
export function errorAt(
  rule: string,
  place: Place,
  message: Message,
  more: { readonly repairs?: readonly Repair[]; readonly related?: readonly RelatedPlace[] } = {},
): Finding {
  return {
    rule,
    severity: 'error',
    message,
    place,
    related: more.related ?? [],
    repairs: more.repairs ?? [],
  };
}

/** A fault of the text itself as a finding. */
export function syntaxFinding({ place, message, repairs }: TextProblem): Finding {
  return errorAt('yaml-syntax', place, message, repairs === undefined ? {} : { repairs });
}

/** A repair of one change that an editor may take without asking. */
export function preferred(title: Message, change: Change): Repair {
  return { title, changes: [change], preferred: true };
}
