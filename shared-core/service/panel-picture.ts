import type { Panel } from '../carcass/model.js';
import { boreMapScene } from '../drawing/bore-map/bore-map.js';
import { smallSvg } from '../drawing/render/small-svg.js';
import type { Screen } from '../drawing/scene/scene.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { drawnOf } from './drawing.js';
import { plain } from './markdown.js';

/** A picture of about 280 by 150 pixels. */
const SMALL: Screen = { pane: { width: 88, height: 48 }, nearer: 1 };
/** Editors cut longer words off, with all that stands behind them. */
const MOST_CHARACTERS = 60_000;

/** The bore map of a panel as a picture in Markdown, its bytes in its address; '' where there is none, or it is too large. */
export function panelPicture(analysis: JobAnalysis, carcass: CarcassAnalysis, panel: Panel): string {
  const drawn = drawnOf(analysis, carcass);
  const scene = drawn === null ? null : boreMapScene(drawn, panel.key, SMALL);
  if (scene === null) return '';
  // Brackets would end the address.
  const data = encodeURIComponent(smallSvg(scene)).replace(/[()']/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`);
  const picture = `![${plain(`${scene.title}. ${scene.caption}`)}](data:image/svg+xml;utf8,${data})`;
  return picture.length > MOST_CHARACTERS ? '' : picture;
}
