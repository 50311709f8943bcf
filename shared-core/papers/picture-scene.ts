import { grow } from '../drawing/scene/boxes.js';
import { frameOf } from '../drawing/scene/extent.js';
import type { PrintedScene, Shape } from '../drawing/scene/scene.js';
import type { Reader } from '../length/reader.js';
import type { Told } from '../words/told.js';

/**
 * A scene of nothing but shapes, for a picture whose words stand in the paper around it.
 * @param margin left free about the shapes, in millimetres of paper
 */
export function pictureScene(
  title: Told,
  shapes: readonly Shape[],
  scale: number,
  margin: number,
  reader: Reader,
): PrintedScene {
  return {
    view: 'panel',
    title,
    facts: [],
    caption: '',
    reader,
    scale,
    frame: grow(frameOf(shapes, scale), margin * scale),
    shapes,
    heads: [],
    table: [],
    findings: [],
    notes: [],
  };
}
