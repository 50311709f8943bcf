import { describe, tableCells } from '../../drawing/bore-map/hole-table.js';
import type { Scene } from '../../drawing/scene/scene.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import { tell } from '../../words/message.js';
import { say } from './messages.js';
import { inShort } from '../../machining/caution.js';
import { column, heading, list, paragraph, type Block, type Paper } from '../paper.js';

/**
 * Bore maps to be printed: a panel's drawing with its holes and its findings under it, as many panels to a page
 * as go on it.
 */
export function printedBoreMaps(
  carcasses: readonly { readonly name: string; readonly scenes: readonly Scene[] }[],
  title: Told,
): Paper {
  return {
    title,
    blocks: [
      { kind: 'cautions', items: [inShort()] },
      ...carcasses.flatMap(({ name, scenes }) => [
        heading(2, asItIs(name)),
        ...scenes.filter((scene) => !isBare(scene)).flatMap(panelBlocks),
        ...bareOnes(scenes.filter(isBare)),
      ]),
    ],
  };
}

/**
 * Nobody bores by a map without bores: a panel that is only cut and banded is named, and has no picture. One note tells what figures
 * are counted from; more tell of a groove, or are the owner's.
 */
const isBare = ({ table, findings, notes }: Scene): boolean =>
  table.length === 0 && findings.length === 0 && notes.filter((note) => note !== inShort()).length < 2;

function bareOnes(scenes: readonly Scene[]): readonly Block[] {
  if (scenes.length === 0) return [];
  const panels = scenes.map(({ title, facts }) => ({ title, size: facts[0]?.value ?? '' }));
  return [paragraph(tell(say.bare({ panels }), 'mm'))];
}

function panelBlocks(scene: Scene): readonly Block[] {
  const { title, facts, caption, heads, table, findings, notes } = scene;
  return [
    heading(
      3,
      title,
      joined(
        facts.map(({ word, value }) => asItIs(`${word} ${value}`)),
        ' · ',
      ),
    ),
    ...(caption === '' ? [] : [paragraph(caption)]),
    { kind: 'picture', name: title, about: describe(scene), scene, file: null },
    ...(table.length === 0
      ? []
      : [{ kind: 'table', columns: heads.map(column), rows: table.map(tableCells) } satisfies Block]),
    ...list(findings.map((one) => tell(say.finding(one), 'mm'))),
    // What every bore map says of safety stands at the head of the paper.
    ...list(notes.filter((note) => note !== inShort())),
  ];
}
