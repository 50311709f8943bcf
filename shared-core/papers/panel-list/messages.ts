import type { Micrometres } from '../../length/units.js';
import { showSizes } from '../../length/show.js';
import { messages } from '../../words/message.js';

/** What the list of all panels says. */
export const say = messages('panel-list', {
  notWorkedOut: ({ carcass }: { readonly carcass: string }) => `${carcass}: cannot be worked out`,
  carcass: (
    { carcass, kind, box }: { readonly carcass: string; readonly kind: string; readonly box: readonly Micrometres[] },
    { unit },
  ) => `${carcass}: ${kind}, ${showSizes(box, unit)}`,
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
    { unit },
  ) => `${panel}: ${showSizes(size, unit)}, to cut ${showSizes(cut, unit)}, ${board}`,
});
