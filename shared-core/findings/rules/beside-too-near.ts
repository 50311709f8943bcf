import { extentsOf } from '../../carcass/pose.js';
import { roleOf } from '../../carcass/roles.js';
import type { Micrometres } from '../../length/units.js';
import { listed, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { setLength } from '../changes.js';
import { grouped } from '../lookups.js';
import type { CarcassRule } from '../rule.js';

interface Near {
  readonly fronts: readonly string[];
  readonly beside: string;
  readonly gap: Micrometres;
  readonly usual: Micrometres;
}

export const say = messages('beside-too-near', {
  near: ({ fronts, beside, gap, usual }: Near, show) =>
    `${listed(fronts)} ${verb(fronts.length, 'stands', 'stand')} ${show.length(gap)} beside ${beside}, and between two fronts there are ${show.length(usual)} (\`gap\`). Beside a panel that reaches as far forward as the fronts the whole gap is needed: make \`reveal\` as great.`,
  reveal: ({ usual }: { readonly usual: Micrometres }, show) =>
    `Let the doors leave ${show.exact(usual)} to be seen of the sides`,
});

export const besideTooNear: CarcassRule = {
  name: 'beside-too-near',
  severity: 'warning',
  about: {
    what: 'An overlay front stands nearer to an end panel or a filler than two fronts stand to each other.',
    why: 'The reveal of a side is half a gap, as the neighbour’s front leaves the other half. An end panel or a filler leaves nothing: with half a gap the front rubs against it at the first change of weather, and the gaps of the row are not alike (common practice, no source).',
    remedy: 'Make the reveal as great as the gap.',
    example: 'kind: base\nwidth: 600\ndoors: left\nend-panels: right',
  },
  check(context) {
    const { spec, carcass } = context;
    const { gap, reveal } = spec.doors;
    const panels = carcass.panels.map((panel) => ({ panel, ...roleOf(panel), run: extentsOf(panel) }));
    const fronts = panels.filter(({ belongs }) => belongs === 'before-box');
    const loose = panels.filter(({ belongs }) => belongs === 'beside-box');
    const near = loose.flatMap((one) =>
      fronts.flatMap((front) => {
        const between = Math.max(front.run.x.from - one.run.x.to, one.run.x.from - front.run.x.to);
        const isBeside = one.run.y.from < front.run.y.to && front.run.y.from < one.run.y.to;
        return isBeside && between >= 0 && between < gap.value ? [{ one, front, between }] : [];
      }),
    );
    return grouped(near, ({ one }) => one.panel.key).map((same) => {
      const { one, between } = same[0]!;
      const keys = same.map(({ front }) => front.panel.key);
      return {
        place: one.panel.place,
        panel: one.panel.key,
        message: say.near({ fronts: keys, beside: one.panel.key, gap: between, usual: gap.value }),
        repairs: [
          {
            title: say.reveal({ usual: gap.value }),
            changes: [setLength(context, reveal.path, gap.value)],
            preferred: false,
          },
        ],
      };
    });
  },
};
