import { matings, type Mating } from '../../boring/matings.js';
import type { Joint } from '../../carcass/model.js';
import { figure, showLength } from '../../length/show.js';
import type { Unit } from '../../length/units.js';
import type { CaseClamp, Shop } from '../../shop/model.js';
import { counted, listed, sentence } from '../../words/english.js';
import type { BuiltCarcass } from '../built.js';
import { outside } from '../checking/paper.js';
import { fittingsOf } from '../hardware-list/paper.js';
import { heading, paragraph, type Block, type Paper } from '../paper.js';
import { manyWords } from '../pieces.js';
import { explodedScene } from './exploded.js';
import { assemblyOrder, type AssemblyStep } from './order.js';

const CAUTION =
  'A case clamp presses with great force: keep hands out while it moves, and let nobody else reach the controls. Lift large boxes with two people. Whoever hangs a cabinet answers for the wall and its fixing. The machine’s manual and local rules decide.';

/** How each box goes together: panel by panel, with what is counted out for each step, how it fits the clamp, what to check. */
export function assemblyPaper(carcasses: readonly BuiltCarcass[], shop: Shop, title: string, unit: Unit): Paper {
  return {
    title,
    blocks: [{ kind: 'cautions', items: [CAUTION] }, ...carcasses.flatMap((one) => carcassBlocks(one, shop, unit))],
  };
}

function carcassBlocks(one: BuiltCarcass, shop: Shop, unit: Unit): readonly Block[] {
  const { name, carcass, boring } = one;
  const steps = assemblyOrder(carcass);
  const joined = matings(carcass, boring);
  const numbers = new Map(steps.flatMap(({ panels }, i) => panels.map(({ key }) => [key, i + 1] as const)));
  const size = outside(carcass.panels);
  return [
    heading(
      1,
      `${name}${manyWords(carcass.count)}`,
      size.map((length) => figure(length, unit)).join(' × ') + ` ${unit}`,
    ),
    paragraph('Dry-fit first: every joint closes by hand before any glue is opened.'),
    {
      kind: 'picture',
      name: `${name}, drawn apart; numbers are the steps`,
      about: `${name} drawn apart. In order: ${steps.map(({ panels }) => listed(panels.map(({ key }) => key))).join('; ')}.`,
      scene: explodedScene(name, carcass.panels, numbers, unit),
      file: null,
    },
    {
      kind: 'table',
      columns: ['Step', 'Put on', 'Joints', 'Fittings'].map((head) => ({ head, figures: false })),
      rows: steps.map((step, i) => [
        String(i + 1),
        putOn(step, i),
        step.joints.map(({ id }) => id.replace('/', ' to ')).join(', '),
        fittingWords(step.joints, joined),
      ]),
    },
    ...[...afterwards(one), clampWords(one, shop, unit), diagonalWords(one, unit)].map(paragraph),
  ];
}

function putOn({ panels, straight }: AssemblyStep, index: number): string {
  const names = listed(panels.map(({ key }) => key));
  if (index === 0 && straight) return `${names}: lay it down`;
  return straight ? names : `${names}: work them in together; no straight move puts them on one by one`;
}

/** '4 dowel-8x30' */
function fittingWords(joints: readonly Joint[], joined: readonly Mating[]): string {
  const ids = new Set(joints.map(({ id }) => id));
  const counts = fittingsOf(joined.filter(({ joint }) => ids.has(joint.id)));
  return [...counts].map(([name, count]) => `${count} ${name}`).join(', ');
}

function afterwards({ carcass }: BuiltCarcass): readonly string[] {
  const has = (role: string): number => carcass.panels.filter((panel) => panel.role === role).length;
  const back = {
    applied: ['Fix the back when the box is square: it keeps it so.'],
    rebated: ['Lay the back into its rebates and fix it when the box is square: it keeps it so.'],
    grooved: [],
    none: [],
  }[carcass.back];
  const loose = has('loose-shelf');
  return [
    ...back,
    ...(has('plinth') > 0 ? ['The plinth goes on when the box stands.'] : []),
    ...(loose > 0 ? [`Drop in ${counted(loose, 'loose shelf', 'loose shelves')} last.`] : []),
  ];
}

/** How the box fits the clamp that it goes to. */
function clampWords({ spec, carcass }: BuiltCarcass, { machines, habits }: Shop, unit: Unit): string {
  const name = spec.machines.clamp?.value ?? habits.machines.clamp;
  const clamp = name === null ? undefined : machines.get(name);
  if (clamp?.kind !== 'clamp')
    return 'The shop file names no case clamp: press the box with hand clamps, square to it.';
  const [width, height, depth] = outside(carcass.panels);
  const sides = [
    sideWords('width', width, clamp, unit),
    sideWords('height', height, clamp, unit),
    sideWords('depth', depth, clamp, unit),
  ];
  return `${sentence(clamp.name)}: ${sides.join('; ')}.`;
}

function sideWords(side: 'width' | 'height' | 'depth', size: number, clamp: CaseClamp, unit: Unit): string {
  const range = clamp[side];
  if (range === null) return `${side} ${showLength(size, unit)}`;
  const fits = size >= range.min && size <= range.max ? '' : ', DOES NOT FIT';
  return `${side} ${showLength(size, unit)} (takes ${figure(range.min, unit)} to ${showLength(range.max, unit)}${fits})`;
}

function diagonalWords({ carcass }: BuiltCarcass, unit: Unit): string {
  const [width, height] = outside(carcass.panels);
  const diagonal = showLength(Math.round(Math.hypot(width, height) / 100) * 100, unit);
  return `In the clamp measure both diagonals at the front: they are alike, ${diagonal}. Where they differ, shift the box in the clamp before the glue sets.`;
}
