import { edgesWithBand } from '../../carcass/banded.js';
import { chosenBand } from '../../carcass/choices.js';
import type { Micrometres } from '../../length/units.js';
import { listed, quoted, verb } from '../../words/english.js';
import { messages } from '../../words/message.js';
import { grouped } from '../lookups.js';
import type { CarcassRule } from '../rule.js';

interface TooNarrow {
  readonly band: string;
  readonly height: Micrometres;
  readonly thickness: Micrometres;
  readonly panels: readonly string[];
}

export const say = messages('band-too-narrow', {
  uncovered: ({ band, height, thickness, panels }: TooNarrow, show) =>
    `${quoted(band)} is ${show.length(height)} wide and does not cover ${verb(panels.length, 'an edge', 'edges')} of ${listed(panels)}, ${show.length(thickness)} thick. Choose a wider band.`,
});

export const bandTooNarrow: CarcassRule = {
  name: 'band-too-narrow',
  severity: 'error',
  about: {
    what: 'A band is narrower than the edge that it is glued to.',
    why: 'Tape is bought wider than the board and trimmed flush on both faces (common practice, no source). One that is narrower leaves bare board beside it, and there is nothing to trim.',
    remedy: 'Choose a band that is at least as wide as the board is thick, or mend its `height` in the shop file.',
    shop: 'bands: { band-15: { thickness: 1, height: 15 } }',
    example: 'kind: base\nwidth: 600\nband: band-15',
  },
  check({ carcass, spec }) {
    const narrow = carcass.panels.flatMap((panel) =>
      edgesWithBand(panel).flatMap(({ edge, band }) => {
        if (band.height === null || band.height >= panel.thickness) return [];
        // What is said of the front edge is said of a cut.
        const chosen = chosenBand(spec, panel.key, edge === 'cut' ? 'front' : edge);
        return [{ panel, band, height: band.height, place: (chosen ?? spec.band).place }];
      }),
    );
    return grouped(
      narrow,
      ({ band, panel, place }) => `${band.name} ${panel.thickness} ${place.part} ${place.start}`,
    ).map((same) => {
      const { panel, band, height, place } = same[0]!;
      const panels = [...new Set(same.map((one) => one.panel.key))];
      return {
        place,
        panel: panel.key,
        message: say.uncovered({ band: band.name, height, thickness: panel.thickness, panels }),
      };
    });
  },
};
