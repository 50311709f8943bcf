import type { Bore, Row } from '../../boring/model.js';
import { isRow } from '../../fittings/purposes.js';
import { groupBy, modulo } from '../../machining/plan/numbers.js';
import type { Micrometres } from '../../length/units.js';
import { counted, listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { setLength } from '../changes.js';
import type { Repair } from '../finding.js';
import { distinct } from '../lookups.js';
import type { CarcassContext, CarcassRule } from '../rule.js';

export const say = messages('slide-beside-row', {
  beside: (
    {
      count,
      panels,
      places,
    }: { readonly count: number; readonly panels: readonly string[]; readonly places: readonly Micrometres[] },
    show,
  ) =>
    `${counted(count, 'screw')} of slides in ${listed(panels)} ${verb(count, 'finds', 'find')} no hole of a row and ${verb(count, 'is', 'are')} bored extra, ${listed(places.map(show.length))} from the front edge. Put the rear row there, or use a slide whose screws are in the rows.`,
  moveRow: ({ to }: { readonly to: Micrometres }, show) => `Put the rear rows ${show.exact(to)} from the front edge`,
});

export const slideBesideRow: CarcassRule = {
  name: 'slide-beside-row',
  severity: 'info',
  about: {
    what: 'Screws of slides stand beside the rows, so that they are bored by themselves.',
    why: 'A screw in the hole of a row costs nothing; each other one needs a stroke of a head that is set for it, and one more hole that can be in the wrong place.',
    remedy: 'Put the rear row where the slide has its rear screw, or use a slide whose screws are in the rows.',
    example: 'kind: base\nwidth: 600\nfronts: [drawer, drawer]',
  },
  check(context) {
    const { boring, carcass } = context;
    // A screw at a hole that it does not fit is told by `bores-collide`.
    const holes = boring.bores.filter(isRow);
    const rows = groupBy(boring.rows, ({ panel }) => panel);
    const extra = boring.bores.filter(
      (bore) =>
        bore.purpose === 'slide' &&
        rows.get(bore.panel)?.every((row) => !isLeftOut(row, bore)) === true &&
        !holes.some(({ panel, u, v }) => panel === bore.panel && u === bore.u && v === bore.v),
    );
    const [drawer] = carcass.drawers;
    if (extra.length === 0 || drawer === undefined) return [];
    const places = distinct(extra.map(({ u }) => u)).toSorted((a, b) => a - b);
    const panels = distinct(extra.map(({ panel }) => panel));
    return [
      {
        place: drawer.place,
        message: say.beside({ count: extra.length, panels, places }),
        bores: extra.map(({ id }) => id),
        repairs: rearRowThere(context, extra, places),
      },
    ];
  },
};

/** Whether a bore stands where a row has a hole that the job leaves out. */
const isLeftOut = ({ u, offset, pitch, holes }: Row, bore: Bore): boolean =>
  holes !== undefined && bore.u === u && modulo(bore.v - offset, pitch) === 0;

/** The rear row at the one place where they are all missed. */
function rearRowThere(
  context: CarcassContext,
  extra: readonly Bore[],
  places: readonly Micrometres[],
): readonly Repair[] {
  const { spec, boring } = context;
  const [to] = places;
  const isRear = boring.rows.some(({ line, u }) => line === 'rear' && to !== undefined && u !== to);
  if (to === undefined || places.length > 1 || !isRear || to <= spec.rowSetback.value) return [];
  if (!extra.every(({ diameter }) => diameter === boring.rows[0]?.diameter)) return [];
  return [{ title: say.moveRow({ to }), changes: [setLength(context, ['rear-row'], to)], preferred: true }];
}
