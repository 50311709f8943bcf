import { counted, listed, sentence } from '../../../shared-core/words/english.js';
import { labels, phrases } from '../../../shared-core/words/told.js';
import { nameOf, type Lay, type Named } from './named.js';

/** What the page of the machine view and the set-up list has. */
export const LABELS = labels({
  machines: 'Machines',
  machineView: 'Machine view',
  machineViewMeaning: 'One stroke after the other, as the operator sees it',
  setUpList: 'Set-up list',
  setUpListMeaning: 'The whole job in the order to run',
  atMachine: 'At the machine',
  atMachineMeaning: 'One task at a time, in large letters, to work by at the machine',
  steps: 'Steps',
  stepsOf: 'Steps of',
  stepsOfCarcass: 'Steps of which carcass',
  stepsOfPanel: 'Steps of which panel',
  wholeJob: 'the whole job',
  allPanels: 'all its panels',
  waiting: 'Waiting for the set-ups.',
  cautions: 'Cautions',

  goToText: 'Go to text',
  goToTextMeaning: 'Go to the line that makes the panel (Enter)',
  settings: 'Machine settings',
  notes: 'Points to watch',
  machineSet: 'Machine set',
  machineSetMeaning: 'The machine is set as listed',
  panelBored: 'Panel bored',
  panelBoredMeaning: 'This panel is bored in this set-up (Space)',
  first: 'First step (Home)',
  setUpBefore: 'Previous set-up (Page Up)',
  before: 'Previous step (Left)',
  after: 'Next step (Right)',
  setUpAfter: 'Next set-up (Page Down)',
  last: 'Last step (End)',

  back: 'Back',
  backMeaning: 'Previous step (Left)',
  done: 'Done',
  isDone: 'Done ✓',
  doneMeaning: 'Tick off and go on (Space)',
  next: 'Next',
  nextMeaning: 'Next step without ticking off (Right)',
  leave: 'Leave',
  leaveMeaning: 'Back to the machine view (Escape)',
  screenStaysOn: 'The screen stays on',
  screenMayGoOff: 'The screen may turn off; this platform does not let a page keep it on',
  checkFirst: 'Measure this piece before you bore the others. If a figure is off, go back and set the machine again.',

  panelsBored: 'Panels bored',
  showSteps: 'Show its steps on the machine',
  goToPanelText: 'Go to the line that makes the panel',
  text: 'Text',
  allBored: 'All bored',
  allBoredMeaning: 'Tick off every panel of this set-up',
  setUpDone: 'done',
  nothingToChange: 'Nothing to change',
  papers: 'Write shop papers',
  papersMeaning: 'Cut list, labels, set-up list and the other papers of the job, to print',

  signsAndKeys: 'Signs and keys',
  keys:
    'Left and right arrow: steps. Page Up and Page Down: set-ups. Space: panel bored. Enter: go to the text. ' +
    'Plus, minus and 0: zoom. Arrows with Shift: move the drawing.',
});

export const PHRASES = phrases({
  stepOf: (step: number, steps: number) => `Step ${step} of ${steps}`,
  setUpOf: (setUp: number, setUps: number, name: string) => `Set-up ${setUp} of ${setUps}: ${name}`,
  setUpAt: (setUp: number, setUps: number, machine: string) => `Set-up ${setUp} of ${setUps} · ${machine}`,
  next: (what: string) => `Next: ${what}`,
  sizeAndStroke: (size: string, stroke: number, strokes: number) =>
    strokes > 1 ? `${size}, stroke ${stroke} of ${strokes} in this set-up` : size,
  figuresIn: (unit: 'mm' | 'in') => `figures in ${unit === 'mm' ? 'millimetres' : 'inches'}`,
  nextSetUp: (setUp: number, machine: string, of: Named) => `set-up ${setUp} on ${machine}, ${nameOf(of)}.`,
  nextStroke: (lay: string) => `${lay}.`,
  nextPanel: (of: Named, lay: string) => `${nameOf(of)}. ${sentence(lay)}.`,

  set: (machine: string) => `Set ${machine}`,
  leaveSet: (machine: string) => `Leave ${machine} as it is`,
  check: (of: Named) => `Check the first piece: ${nameOf(of)}`,
  bore: (of: Named, pieces: number, stroke: number, strokes: number) =>
    [
      `Bore ${nameOf(of)}`,
      ...(pieces > 1 ? [counted(pieces, 'piece')] : []),
      ...(strokes > 1 ? [`stroke ${stroke} of ${strokes}`] : []),
    ].join(', '),

  kindAndSetUps: (kind: string, setUps: number) => `${kind}, ${counted(setUps, 'set-up')}`,
  runBored: (of: Named) => `${nameOf(of)} bored`,
  runName: (of: Named, pieces: number) => (pieces > 1 ? `${pieces} of ${nameOf(of)}` : nameOf(of)),
  runText: (of: Named) => `${nameOf(of)}: show in the text`,
  toBore: (panels: number, strokes: number, holes: number) =>
    [counted(panels, 'panel'), counted(strokes, 'stroke'), counted(holes, 'hole')].join(', '),
  bored: (bored: number, panels: number) => `${bored} of ${counted(panels, 'panel')} bored`,
  ticked: (bored: number, runs: number) => `${bored} of ${counted(runs, 'panel run')} ticked off`,
  eachStop: (measured: string) => `Each stop: ${measured}.`,
  lay: ({ words, lowered, held }: Lay) =>
    sentence(
      [
        words,
        ...(lowered.length > 0 ? [`lower ${listed(lowered)}`] : []),
        ...(held ? [] : ['hold it in a fixture, as no clamp reaches it']),
      ].join('; '),
    ),
  broken: (carcasses: readonly string[]) =>
    carcasses.length === 1
      ? `${carcasses[0]!} is not in this list, because its text has errors.`
      : `${listed(carcasses)} are not in this list, because their text has errors.`,
  /** @param reason why, as a sentence */
  unbored: (holes: number, panels: readonly Named[], reason: string) =>
    `No set-up bores ${counted(holes, 'hole')} of ${counted(panels.length, 'panel')} (${panels.map(nameOf).join('; ')}). ${reason}`,
});
