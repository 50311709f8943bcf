import { chosenBand } from '../../carcass/choices.js';
import { materialsOf } from '../../carcass/roles.js';
import type { Located } from '../../document/place.js';
import { NO_BAND } from '../../shop/habits.js';
import { ownText, remove, replaceName } from '../changes.js';
import type { Repair } from '../finding.js';
import { grouped } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Micrometres } from '../../length/units.js';

export const say = messages('band-missing', {
  bare: ({ panels }: { readonly panels: readonly string[] }) =>
    `The front ${verb(panels.length, 'edge', 'edges')} of ${listed(panels)} ${verb(panels.length, 'has', 'have')} no band. Name one with \`band\`.`,
  bandFront: ({ band, thickness }: { readonly band: string; readonly thickness: Micrometres }, show) =>
    `Band the front edge with ${quoted(band)} (${show.length(thickness)})`,
  bandEvery: ({ band }: { readonly band: string }) => `Band every bare front edge with ${quoted(band)}`,
  removeNone: () => 'Remove `none` and use the usual band',
});

export const bandMissing: CarcassRule = {
  name: 'band-missing',
  severity: 'warning',
  about: {
    what: 'The front edge of a panel is bare.',
    why: 'The front edge is what shows when the carcass is closed up, and it is the reference of every bore: a panel banded after boring is a band’s thickness too deep.',
    remedy: 'Name a band for it, or leave `none` out so that the shop’s usual band is taken.',
    example: 'kind: base\nwidth: 600\nband: none',
  },
  check(context) {
    const bare = context.carcass.panels.filter((panel) => panel.seen.includes('front') && panel.bands.front === null);
    const blamed = bare.map((panel) => ({
      panel,
      band: chosenBand(context.spec, panel.key, 'front') ?? materialsOf(context.spec, panel).band,
    }));
    // A band by a name that the shop has not is another rule's matter.
    const chosen = blamed.filter(({ band }) => band.value === NO_BAND);
    return grouped(chosen, ({ band }) => `${band.place.part} ${band.place.start}`).map((same): Found => {
      const { panel, band } = same[0]!;
      const panels = same.map((one) => one.panel.key);
      return {
        place: band.place,
        panel: panel.key,
        message: say.bare({ panels }),
        repairs: repairs(context, band),
      };
    });
  },
};

function repairs(context: CarcassContext, band: Located<string>): readonly Repair[] {
  const { shop, spec } = context;
  const wanted = [spec.band.value, shop.habits.band, ...shop.bands.keys()].find((name) => shop.bands.has(name));
  const change = wanted === undefined ? null : replaceName(band, wanted);
  if (wanted === undefined || change === null) return [];
  const repairs: Repair[] = [
    {
      title: say.bandFront({ band: wanted, thickness: shop.bands.get(wanted)!.thickness }),
      changes: [change],
      preferred: true,
      batch: { key: 'band-missing', title: say.bandEvery({ band: wanted }) },
    },
  ];
  if (ownText(band)) repairs.push({ title: say.removeNone(), changes: [remove(band.path)], preferred: false });
  return repairs;
}
