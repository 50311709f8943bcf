import { matings, type Mating } from '../../boring/matings.js';
import type { Joint } from '../../carcass/model.js';
import { frontDiagonal, outerSize } from '../../carcass/outer-size.js';
import { isInDrawer } from '../../carcass/roles.js';
import { showSizes } from '../../length/show.js';
import type { Reader } from '../../length/reader.js';
import type { Shop } from '../../shop/model.js';
import { listed } from '../../words/english.js';
import { tell, type Message } from '../../words/message.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import type { BuiltCarcass } from '../built.js';
import { fittingsOf } from '../hardware-list/paper.js';
import { column, heading, paragraph, type Block, type Paper } from '../paper.js';
import { carcassNamed } from '../pieces.js';
import { explodedScene } from './exploded.js';
import { shelvesOnPins } from '../pins.js';
import { HEADS, say } from './messages.js';
import { assemblyOrder, type AssemblyStep } from './order.js';

/** How each box goes together: panel by panel, with what is counted out for each step, how it fits the clamp, what to check. */
export function assemblyPaper(carcasses: readonly BuiltCarcass[], shop: Shop, title: Told, reader: Reader): Paper {
  return {
    title,
    blocks: [
      { kind: 'cautions', items: [tell(say.caution(), reader)] },
      ...carcasses.flatMap((one) => carcassBlocks(one, shop, reader)),
    ],
  };
}

function carcassBlocks(one: BuiltCarcass, shop: Shop, reader: Reader): readonly Block[] {
  const { name, carcass, boring } = one;
  const told = (message: Message): Told => tell(message, reader);
  const size = outerSize(carcass);
  const steps = assemblyOrder(carcass);
  const mated = matings(carcass, boring);
  const numbers = new Map(steps.flatMap(({ panels }, i) => panels.map(({ key }) => [key, i + 1] as const)));
  return [
    heading(1, carcassNamed(name, carcass.count), asItIs(showSizes([size.width, size.height, size.depth], reader))),
    paragraph(told(say.dryFit())),
    {
      kind: 'picture',
      name: told(say.drawnApart({ carcass: name })),
      about: told(say.drawnInOrder({ carcass: name, steps: steps.map(namesIn) })),
      scene: explodedScene(
        name,
        carcass.panels.filter((panel) => !isInDrawer(panel)),
        numbers,
        reader,
      ),
      file: null,
    },
    {
      kind: 'table',
      columns: [HEADS.step, HEADS.putOn, HEADS.joints, HEADS.fittings].map(column),
      rows: steps.map((step, i) => [
        asItIs(String(i + 1)),
        putOn(step, i),
        joined(
          step.joints.map(({ endPanel, facePanel }) => told(say.joint({ end: endPanel, face: facePanel }))),
          ', ',
        ),
        fittingWords(step.joints, mated),
      ]),
    },
    ...[clamping(one, shop), diagonals(one), ...afterwards(one)].map((message) => paragraph(told(message))),
  ];
}

const namesIn = ({ panels }: AssemblyStep): readonly string[] => panels.map(({ key }) => key);

function putOn(step: AssemblyStep, index: number): Told {
  const panels = namesIn(step);
  if (!step.straight) return tell(say.workIn({ panels }), 'mm');
  return index === 0 ? tell(say.layDown({ panel: listed(panels) }), 'mm') : asItIs(listed(panels));
}

/** '4 dowel-8x30' */
function fittingWords(joints: readonly Joint[], mated: readonly Mating[]): Told {
  const ids = new Set(joints.map(({ id }) => id));
  const counts = fittingsOf(mated.filter(({ joint }) => ids.has(joint.id)));
  return asItIs([...counts].map(([name, count]) => `${count} ${name}`).join(', '));
}

/** What follows once the box is pressed and square. */
function afterwards(one: BuiltCarcass): readonly Message[] {
  const { carcass, spec, boring } = one;
  const has = (role: string): number => carcass.panels.filter((panel) => panel.role === role).length;
  const back = { applied: [say.fixBack()], rebated: [say.layBack()], grooved: [], none: [] }[carcass.back];
  const loose = shelvesOnPins(one);
  const isClipped = boring.feet.some(({ clip }) => clip !== null);
  const still = has('fixed-front') + has('blind-panel');
  return [
    ...back,
    ...(boring.feet.length > 0 ? [say.feet({ count: boring.feet.length })] : []),
    ...(has('plinth') > 0 && !isClipped ? [say.plinth()] : []),
    ...(carcass.doors.length > 0 ? [say.hangDoors({ count: carcass.doors.length })] : []),
    ...(carcass.drawers.length > 0
      ? [say.drawers({ count: carcass.drawers.length, bottom: spec.drawers.bottom.value })]
      : []),
    ...(has('end-panel') > 0 ? [say.endPanels({ count: has('end-panel') })] : []),
    ...(has('filler') > 0 ? [say.fillers({ count: has('filler') })] : []),
    ...(still > 0 ? [say.fixedFronts({ count: still })] : []),
    ...(boring.pulls.length > 0 ? [say.pulls({ count: boring.pulls.length })] : []),
    ...(boring.brackets.length > 0 ? [say.brackets({ count: boring.brackets.length })] : []),
    ...(boring.wardrobeRails.length > 0 ? [say.wardrobeRails({ count: boring.wardrobeRails.length })] : []),
    // Clipped on before, it would hide the screws of the feet.
    ...(has('plinth') > 0 && isClipped ? [say.clipPlinth()] : []),
    ...(loose.length > 0 ? [say.looseShelves({ shelves: loose })] : []),
  ];
}

/** How the box fits the clamp that it goes to. */
function clamping({ spec, carcass }: BuiltCarcass, { machines, habits }: Shop): Message {
  const name = spec.machines.clamp?.value ?? habits.machines.clamp;
  const clamp = name === null ? undefined : machines.get(name);
  if (clamp?.kind !== 'clamp') return say.noClamp();
  const { width, height, depth } = outerSize(carcass);
  return say.clamp({
    clamp: clamp.name,
    sides: [
      { side: 'width', size: width, range: clamp.width },
      { side: 'height', size: height, range: clamp.height },
      { side: 'depth', size: depth, range: clamp.depth },
    ],
  });
}

function diagonals({ carcass }: BuiltCarcass): Message {
  return say.diagonals({ diagonal: frontDiagonal(carcass) });
}
