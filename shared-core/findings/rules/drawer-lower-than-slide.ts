import { extentsOf } from '../../carcass/pose.js';
import { keyInDrawer } from '../../job/panel-key.js';
import { half, type Micrometres } from '../../length/units.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { ownText, remove } from '../changes.js';
import { grouped, panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';

interface Low {
  readonly drawers: readonly string[];
  readonly height: Micrometres;
  readonly slide: string;
  readonly needs: Micrometres;
}

export const say = messages('drawer-lower-than-slide', {
  low: ({ drawers, height, slide, needs }: Low, show) =>
    `The ${verb(drawers.length, 'box', 'boxes')} of ${listed(drawers)} ${verb(drawers.length, 'is', 'are')} ${show.length(height)} high, and ${quoted(slide)} reaches ${show.length(needs)} over the lower edge. Make the front or the box higher, or use a lower slide.`,
  asHigh: () => 'Make the boxes as high as their places allow',
});

export const drawerLowerThanSlide: CarcassRule = {
  name: 'drawer-lower-than-slide',
  severity: 'warning',
  about: {
    what: 'The box of a drawer is lower than the slide at its side.',
    why: 'The slide then stands over the side of the drawer, is seen from above, and its upper screws find no wood.',
    remedy: 'Make the front or the box higher, or use a lower slide.',
    example: 'kind: base\nwidth: 600\nfronts: [drawer, drawer]\ndrawers: { height: 45 }',
  },
  check(context) {
    const { spec, carcass } = context;
    const low = carcass.drawers.flatMap((drawer) => {
      const { slide, line } = drawer;
      const side = panelOf(context, keyInDrawer(drawer.key, 'left'))!;
      const floor = line - slide.heightOffset;
      const height = extentsOf(side).z.to - floor;
      const needs = slide.heightOffset + half(slide.bodyHeight);
      return height < needs ? [{ drawer, height, needs }] : [];
    });
    return grouped(low, ({ drawer, height }) => `${drawer.place.start} ${height}`).map((same): Found => {
      const { drawer, height, needs } = same[0]!;
      const own = spec.drawers.height;
      return {
        place: drawer.place,
        message: say.low({ drawers: same.map((one) => one.drawer.key), height, slide: drawer.slide.name, needs }),
        repairs:
          own !== null && ownText(own) ? [{ title: say.asHigh(), changes: [remove(own.path)], preferred: true }] : [],
      };
    });
  },
};
