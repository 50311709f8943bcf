import { described } from '../../machining/described.js';
import { stopCalled } from '../../drawing/words.js';
import { cautionsFor } from '../../machining/caution.js';
import { secondsOf, workOf } from '../../machining/plan/cost.js';
import type { Plan } from '../../machining/plan/plan.js';
import type { SetUp } from '../../machining/set-up.js';
import { grouped } from '../../findings/lookups.js';
import { KIND_WORDS } from '../../shop/kind-words.js';
import {
  column,
  figuresColumn,
  heading,
  paragraph,
  TICK,
  type Block,
  type Cautions,
  type Cell,
  type Figures,
  type Table,
} from '../paper.js';
import { panelsNamed, piecesIn } from '../pieces.js';
import { laidRuns, layRules, type LaidRun, type LaidStep } from './lay.js';
import { bitSentences, comeSentences, inOrder, settingsOf, type InOrder } from './settings.js';
import { countedFrom } from './spindles.js';
import type { Reader } from '../../length/reader.js';
import { tell } from '../../words/message.js';
import { asItIs, joined, type Told } from '../../words/told.js';
import { CHECK_HEADS, HEADS, say } from './messages.js';
import { firstPieceBlocks, machinePictures, type OnPaper } from './printed.js';
import type { JobWords } from './words.js';

/**
 * The set-ups of a job, in the order to run: what to set, then panel by panel.
 * @param isWanted which set-ups; they keep their numbers in the whole order
 * @param onPaper what is printed beside the words; null for words alone
 */
export function setUpBlocks(
  plan: Plan,
  words: JobWords,
  isWanted: (setUp: SetUp) => boolean = () => true,
  onPaper: OnPaper | null = null,
): readonly Block[] {
  return inOrder(plan).flatMap((one, index) =>
    isWanted(one.planned.setUp) ? setUpPart(one, index + 1, plan.setUps.length, words, onPaper) : [],
  );
}

function setUpPart(
  one: InOrder,
  number: number,
  of: number,
  words: JobWords,
  onPaper: OnPaper | null,
): readonly Block[] {
  const { setUp, refused, seconds } = one.planned;
  const { machineReader: reader } = words;
  const laid = laidRuns(setUp, words);
  const settings = settingsOf(one, reader);
  const work = workOf(setUp);
  return [
    heading(
      1,
      tell(say.heading({ number, of, setUp: setUp.id }), reader),
      tell(say.onMachine({ machine: setUp.machine.name, kind: KIND_WORDS[setUp.machine.kind] }), reader),
    ),
    cautions(setUp, laid, reader),
    ...comeSentences(one, reader).map(paragraph),
    paragraph(
      tell(settings.some(({ changed }) => changed) ? say.changeMarked({ seconds }) : say.nothingToChange(), reader),
    ),
    figures(one, words),
    ...(onPaper === null ? [] : machinePictures(setUp, onPaper, reader)),
    paragraph(tell(say.thenWork({ work, seconds: secondsOf(work, words.handling) }), reader)),
    ...layRules(setUp, words).map(paragraph),
    ...(onPaper === null ? [] : firstPieceBlocks(setUp, onPaper, words)),
    runs(laid, laidRuns({ ...setUp, runs: refused }, words), words, onPaper !== null),
  ];
}

function cautions(setUp: SetUp, laid: readonly LaidRun[], reader: Reader): Cautions {
  const isLoose = laid.some(({ steps }) => steps.some(({ held }) => !held));
  return {
    kind: 'cautions',
    items: [...cautionsFor(setUp).map(({ text }) => text), ...(isLoose ? [tell(say.unheld(), reader)] : [])],
  };
}

/** All settings, those to be changed marked; what is done with the bits is told in words. */
function figures(one: InOrder, { machineReader: reader }: JobWords): Figures {
  const { setUp, changes, found } = one.planned;
  const doing = changes.machine && found === null ? [] : bitSentences(one, reader);
  const settings = settingsOf(one, reader);
  return {
    kind: 'figures',
    figures: settings.map(({ name, value, about, changed }, index) => ({
      name,
      value,
      about,
      marked: changed,
      // The bits come last.
      doing: index === settings.length - 1 ? doing : [],
    })),
    note: joined(restWords(setUp, reader), ' '),
  };
}

/** What must not stand in the way: the stops that are not set, and the spindles without a bit. */
function restWords({ machine, stops }: SetUp, reader: Reader): readonly Told[] {
  const others = machine.stops.map(({ name }) => name).filter((name) => !stops.some((set) => set.name === name));
  return [
    ...(described(machine).spindles === 'one' ? [] : [tell(say.counted({ from: countedFrom(machine) }), reader)]),
    ...(others.length > 0 ? [tell(say.notInUse({ stops: others.map(stopCalled) }), reader)] : []),
  ];
}

/** Stroke by stroke; panels that are equal, and are laid and bored alike, are one line with their number. Then those that are refused. */
function runs(
  laid: readonly LaidRun[],
  refused: readonly LaidRun[],
  { machineReader: reader }: JobWords,
  isTicked: boolean,
): Table {
  const headOf = (same: readonly LaidRun[], { size }: LaidRun): Cell[] => [
    tell(say.piecesOf({ pieces: piecesIn(same) }), reader),
    panelsNamed(same),
    size,
  ];
  const alike = grouped(laid, (run) => JSON.stringify([run.size, run.steps]));
  const notBored = grouped(refused, ({ size }) => size);
  return {
    kind: 'table',
    columns: [
      figuresColumn(HEADS.pieces),
      column(HEADS.panel),
      column(HEADS.size),
      figuresColumn(HEADS.stroke),
      column(HEADS.doing),
      ...(isTicked ? [column(CHECK_HEADS.done)] : []),
    ],
    rows: [
      ...alike.flatMap((same): Cell[][] =>
        same[0]!.steps.map((step, at) => [
          ...(at === 0 ? headOf(same, same[0]!) : [null, null, null]),
          asItIs(String(at + 1)),
          strokeWords(step, reader),
          ...(isTicked ? [at === 0 ? TICK : ('' as const)] : []),
        ]),
      ),
      ...notBored.map((same): Cell[] => [
        ...headOf(same, same[0]!),
        '',
        tell(say.doNotBore(), reader),
        ...(isTicked ? ([''] as const) : []),
      ]),
    ],
  };
}

function strokeWords({ lowered, ...rest }: LaidStep, reader: Reader): Told {
  return tell(say.stroke({ ...rest, lowered: lowered.map(stopCalled) }), reader);
}
