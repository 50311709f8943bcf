import type { Micrometres } from '../../length/units.js';
import { clampsOf, depthOnTable, heldIn } from '../../machining/plan/holding.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import type { Show } from '../../words/show.js';
import { distinct, grouped, panelOf } from '../lookups.js';
import type { CarcassRule, Found } from '../rule.js';
import { sizeCause } from '../size-cause.js';

export const clampMissesPanel: CarcassRule = {
  name: 'clamp-misses-panel',
  severity: 'warning',
  about: {
    what: 'No clamp of the machine comes down on a panel with its whole pad.',
    why: 'The bits lift, turn or push what is not held, and a panel that moves is bored out of place, or thrown. The clamps stand where the shop file says, the panel where its stop puts it; a machine without clamps in the shop file is not judged. The machine’s manual decides how it holds.',
    remedy: 'Hold the panel in a fixture, never by hand; or set a clamp where it comes down on it.',
    example: 'kind: base\nwidth: 600\njoint: cam-15',
    shop: [
      'vertical-heads:',
      '  upright:',
      '    spindles: 24',
      '    pitch: 32',
      '    fence: far',
      '    from: above',
      '    fence-offset: 20 to 80',
      '    depth: 2 to 60',
      '    stops:',
      '      left: { side: left, range: 0 to 1300, lowers: yes }',
      '      right: { side: right, range: 0 to 1300, lowers: yes }',
      '    clamps: { holder: { along: 40, across: 150 } }',
    ].join('\n'),
  },
  check(context) {
    const loose = context.operations.operations.flatMap((operation) => {
      const held = heldIn(operation);
      const panel = panelOf(context, operation.panel);
      return held === 'held' || panel === undefined ? [] : [{ operation, panel, held }];
    });
    return grouped(
      loose,
      ({ operation, held }) =>
        `${operation.machine.name} ${held} ${depthOnTable(operation)} ${operation.blank.thickness}`,
    ).map((same): Found => {
      const { operation, panel, held } = same[0]!;
      const deep = depthOnTable(operation);
      const side = operation.machine.kind === 'horizontal' ? 'length' : 'width';
      const panels = distinct(same.map((one) => one.panel.key));
      const nearest = clampsOf(operation).reduce((a, b) => (b.across < a.across ? b : a));
      const isTooNarrow = clampsOf(operation).every(({ across, pad }) => 2 * (deep - across) < pad);
      const figures = { panels, machine: operation.machine.name, held, deep };
      return {
        place: sizeCause(context, panel, side).place,
        panel: panel.key,
        message: isTooNarrow
          ? say.tooFarOut({ ...figures, side, across: nearest.across, most: deep - nearest.pad / 2 })
          : say.beside(figures),
        bores: distinct(
          same.flatMap((one) =>
            one.operation.ways[0]!.strokes.flatMap(({ wanted }) => wanted.map(({ bore }) => bore.id)),
          ),
        ),
      };
    });
  },
};

interface Loose {
  readonly panels: readonly string[];
  readonly machine: string;
  readonly held: 'in-part' | 'not';
}
interface TooFarOut extends Loose {
  readonly side: 'length' | 'width';
  readonly deep: Micrometres;
  /** The clamp that is nearest to the fence, and where it would have to stand at most. */
  readonly across: Micrometres;
  readonly most: Micrometres;
}

export const say = messages('clamp-misses-panel', {
  tooFarOut: ({ deep, side, across, most, ...loose }: TooFarOut, show: Show) =>
    `${comesDown(loose)}: ${verb(loose.panels.length, 'it is', 'they are')} ${show.length(deep)} ${side === 'width' ? 'wide' : 'long'}, and the nearest clamp stands ${show.length(across)} from the ${side === 'width' ? 'fence' : 'head'}. Hold ${verb(loose.panels.length, 'it', 'them')} in a fixture, or set a clamp to at most ${show.length(most)} (\`across\`).`,
  beside: (loose: Loose) =>
    `${comesDown(loose)} where ${verb(loose.panels.length, 'it lies', 'they lie')} at the stop. Hold ${verb(loose.panels.length, 'it', 'them')} in a fixture, or set a clamp nearer to the spindles (\`along\`).`,
});

function comesDown({ panels, machine, held }: Loose): string {
  return held === 'not'
    ? `No clamp of ${quoted(machine)} comes down on ${listed(panels)}`
    : `The clamps of ${quoted(machine)} come down on ${listed(panels)} only in part`;
}
