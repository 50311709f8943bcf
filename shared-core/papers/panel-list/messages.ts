import type { Micrometres } from '../../length/units.js';
import { showSizes } from '../../length/show.js';
import { messages } from '../../words/message.js';

/** What the list of all panels says. */
export const say = messages('panel-list', {
  notWorkedOut: ({ carcass }: { readonly carcass: string }) => `${carcass}: cannot be worked out`,
  carcass: (
    {
      carcass,
      kind,
      box,
      wings,
    }: {
      readonly carcass: string;
      readonly kind: string;
      readonly box: readonly Micrometres[];
      /** How deep those of one across a corner are. */
      readonly wings: Micrometres | null;
    },
    show,
  ) =>
    `${carcass}: ${kind}, ${showSizes(box, show.reader)}${wings === null ? '' : `, across a corner with wings ${show.exact(wings)} deep`}`,
  panel: (
    {
      panel,
      size,
      cut,
      board,
    }: {
      readonly panel: string;
      readonly size: readonly Micrometres[];
      readonly cut: readonly Micrometres[];
      readonly board: string;
    },
    { reader },
  ) => `${panel}: ${showSizes(size, reader)}, to cut ${showSizes(cut, reader)}, ${board}`,
});
