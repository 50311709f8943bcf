import { inUnit } from '../../words/names.js';
import { messages } from '../../words/message.js';
import { labels } from '../../words/told.js';

export const HEADS = labels('checking-heads', {
  panels: 'Panels, when bored',
  panel: 'Panel',
  boxInClamp: 'The box, in the clamp',
  box: 'Box',
  measure: 'Measure',
  from: 'From',
  to: 'To',
  found: 'Found',
});

/** What is measured. */
export const MEASURES = labels('checking-measures', {
  length: 'length',
  width: 'width',
  thickness: 'thickness',
  widthOverAll: 'width over all',
  heightOverAll: 'height over all, without plinth',
  depthOverAll: 'depth over all',
  diagonals: 'diagonals at the front, both alike',
  frontOffset: 'offset of front edges',
  step: 'step at the outside',
  gap: 'gap in a joint',
  looseShelves: 'loose shelves drop in and lie on all pins',
});

/** What the checking sheet says. */
export const say = messages('checking', {
  about: (_: unknown, { unit }) =>
    `In ${inUnit(unit)}. The limits follow from the tolerances of the shop file. Put right whatever lies outside them before the next step; force nothing.`,
  firstBore: ({ surface, edge, isRow }: { readonly surface: string; readonly edge: string; readonly isRow: boolean }) =>
    `${isRow ? 'first row hole' : 'first bore'} in the ${surface}, from the ${edge}`,
});
