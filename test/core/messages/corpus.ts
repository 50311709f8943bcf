import { NEUTRAL_SHOP_TEXT } from '../../../shared-core/shop/neutral-text.js';
import { batchesFor } from '../../../shared-core/engine/repairs.js';
import { refactorsAt } from '../../../shared-core/engine/refactors.js';
import { Engine, type FileFinding, type JobAnalysis } from '../../../shared-core/engine.js';
import type { Finding } from '../../../shared-core/findings/finding.js';
import { readingRules } from '../../../shared-core/findings/reading-rules.js';
import { rules } from '../../../shared-core/findings/registry.js';
import type { Unit } from '../../../shared-core/length/units.js';
import { changeSentences, inOrder } from '../../../shared-core/papers/set-up/settings.js';
import { drawStep } from '../../../shared-core/service/machine-step.js';
import { sharedLoadOf } from '../../../shared-core/service/shared-load.js';
import { replayedPlan } from '../../../shared-core/service/set-up-plan.js';
import { explain } from '../../../shared-core/service/hover.js';
import { boxesOf } from '../../../shared-core/service/box-view.js';
import { listSetUps, unboredHoles } from '../../../shared-core/service/set-ups.js';
import { coverSolver } from '../../../server/cover-solver.js';
import { asText } from '../../../shared-core/papers/render/text.js';
import { allPanelsScene } from '../../../shared-core/drawing/bore-map/all-panels.js';
import { mapsToLookAt } from '../../../shared-core/service/bore-maps.js';
import { drawingOf } from '../../../shared-core/service/drawing.js';
import type { AnalysedFile } from '../../../shared-core/service/file.js';
import { allFindings, findingTotals } from '../../../shared-core/service/findings.js';
import { shopView } from '../../../shared-core/service/shop-view.js';
import { jointsOf } from '../../../shared-core/service/joints.js';
import { panelsOf } from '../../../shared-core/service/panels.js';
import { PAPER_NAMES, papersOf } from '../../../shared-core/service/papers.js';
import { carcassTotals, planTotals } from '../../../shared-core/service/totals.js';
import { readShop } from '../../../shared-core/shop/read.js';
import { tell } from '../../../shared-core/words/message.js';
import { asMessage } from '../../in-words.js';
import { analyse, demoText, opened } from '../findings/jobs.js';
import { sayCommandLine, sayOlderPlans, sayRefusedNames } from './command-line-words.js';
import { sayBesideText } from './beside-text.js';
import { sayHandMadeStrokes } from './strokes.js';
import { sayServer } from './server-words.js';
import { differences, faultsOfSheets, obstacles } from './sheets.js';
import { faultsOfOurs } from './spoilt.js';
import { BARE, FEW, JOBS, PAPERS, SAWLESS, SHEETLESS, SHOPS, SOUND } from './texts.js';

/** The templates that a rule's findings and their repairs are told with, and what they first said there. */
export interface OfRule {
  readonly findings: Map<string, string>;
  readonly repairs: Map<string, string>;
}

/** A text that a rule's own test shows it with. */
export interface RuleText {
  readonly carcass: string;
  readonly unit?: Unit;
  readonly shop?: string;
}

/** Has everything told that these texts bring up; gives which rule told which. */
export async function sayAll(ofRules: readonly RuleText[]): Promise<ReadonlyMap<string, OfRule>> {
  const said = new Map<string, OfRule>();
  const say = (finding: Finding, unit: Unit): void => sayFinding(finding, unit, said);
  const sayJob = (job: JobAnalysis): void => {
    for (const one of job.findings()) {
      say(one.finding, job.unit);
      sayBatches(job, one);
    }
    unboredHoles(job);
  };
  for (const { about } of [...rules, ...readingRules]) sayJob(jobOf(about.example, about.shop));
  for (const { carcass, shop, unit } of ofRules) sayJob(jobOf(carcass.replace(/[«»]/g, ''), shop, unit));
  for (const name of ['every-finding', 'kitchen', 'studio']) {
    const job = analyse(demoText(`${name}.carcass.yaml`));
    sayJob(job);
    sayPlaces(job);
  }
  saySetUps(analyse(SOUND));
  for (const name of ['kitchen', 'every-finding']) saySetUps(apart(name));
  for (const name of ['kitchen', 'studio', 'every-finding']) saySetUps(analyse(demoText(`${name}.carcass.yaml`)));
  for (const text of JOBS) {
    const job = typeof text === 'string' ? analyse(text) : analyse(text[0], { 'own.shop.yaml': text[1] });
    sayJob(job);
    sayPlaces(job);
    saySetUps(job);
  }
  for (const text of SHOPS) {
    const { shop, findings } = readShop(text);
    for (const finding of findings) say(finding, shop.unit);
  }
  for (const [rule, messages] of faultsOfOurs()) {
    for (const message of messages) {
      const words = tell(message, 'mm');
      const own = said.get(rule) ?? { findings: new Map(), repairs: new Map() };
      note(own.findings, message.id, words);
      said.set(rule, own);
    }
  }
  for (const message of [...faultsOfSheets(), ...differences(), ...obstacles()]) tell(message, 'mm');
  const demos = ['kitchen', 'studio', 'every-finding'].map((name) => analyse(demoText(`${name}.carcass.yaml`)));
  for (const job of [
    ...demos,
    ...PAPERS.map((text) =>
      analyse(text, { 'own.shop.yaml': SHEETLESS, 'sawless.shop.yaml': SAWLESS, 'few.shop.yaml': FEW }),
    ),
  ])
    await sayPapers(job);
  sayNothing();
  sayBesideText();
  sayHandMadeStrokes();
  sayServer((finding) => say(finding, 'mm'));
  sayOlderPlans();
  sayRefusedNames();
  sayMachines();
  await sayCommandLine();
  saySharedLoads();
  return said;
}

/** A job of one carcass, or the text itself where it is a whole job. */
function jobOf(text: string, shop?: string, unit: Unit = 'mm'): JobAnalysis {
  const whole = /^(carcasses|shop|unit|title):/.test(text);
  const named = shop !== undefined && shop.endsWith('.yaml') ? shop : 'bench.shop.yaml';
  const head = shop === undefined ? '' : `shop: ${named}\n`;
  const body = text.replaceAll('\n', '\n    ');
  const job = whole ? text : `unit: ${unit}\n${head}carcasses:\n  sink:\n    ${body}\n`;
  return analyse(job, shop === undefined || named === shop ? {} : { [named]: shop });
}

function sayFinding({ rule, message, related, repairs }: Finding, unit: Unit, said: Map<string, OfRule>): void {
  const own = said.get(rule) ?? { findings: new Map(), repairs: new Map() };
  said.set(rule, own);
  note(own.findings, message.id, tell(message, unit));
  for (const one of related) tell(one.message, unit);
  for (const { title, batch } of repairs) {
    note(own.repairs, title.id, tell(title, unit));
    if (batch !== undefined) tell(batch.title, unit);
  }
}

/** What a test puts in the place of the disk is no words of ours. */
function note(said: Map<string, string>, id: string, words: string): void {
  if (!said.has(id) && !id.startsWith('test.')) said.set(id, words);
}

function sayBatches(job: JobAnalysis, one: FileFinding): void {
  for (const { title } of batchesFor(job, one)) tell(title, job.unit);
}

const LONGEST_LOOKED_THROUGH = 20_000;

/** What is said of the places of a text: hovers, and what can be made of what stands there. */
function sayPlaces(analysis: JobAnalysis): void {
  if (analysis.text.length > LONGEST_LOOKED_THROUGH) return;
  for (let offset = 0; offset < analysis.text.length; offset += 3) {
    explain({ kind: 'job', analysis }, offset);
    for (const { title } of refactorsAt(analysis, offset)) tell(title, analysis.unit);
  }
}

/** What the papers of the machines say: of all set-ups, and of those of the first machine. */
function saySetUps(job: JobAnalysis): void {
  if (job.text.length > LONGEST_LOOKED_THROUGH) return;
  const plan = replayedPlan(job);
  plan.on(null)?.inWords();
  plan.on(job.setUps()[0]?.setUp.machine.name ?? null)?.inWords();
  inOrder(job.plan()).forEach((one) => changeSentences(one, job.shop.unit));
  if (job.carcasses.length < 5) sayStrokes(job);
}

/** A demo job with places of each joint's own, so that its set-ups are too many to prove their order. */
function apart(name: string): JobAnalysis {
  const job = demoText(`${name}.carcass.yaml`);
  const [, reference = ''] = /^shop: (.*)/m.exec(job) ?? [];
  const habits = 'habits:\n  first-dowel: 53\n  dowel-spacing: 160\n  share-places: no\n';
  return analyse(job, { [reference]: demoText(reference).replace('habits:\n', habits) });
}

/** What the machine view says of every stroke. */
function sayStrokes(job: JobAnalysis): void {
  const plan = job.plan();
  const document = {
    uri: 'file:///x',
    version: 1,
    toRange: () => ({ start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }),
  };
  for (const { setUp } of plan.setUps) {
    for (const { carcass, panel, steps } of setUp.runs) {
      steps.forEach((_, step) =>
        drawStep(job, document, plan, { uri: document.uri, setUp: setUp.id, carcass, panel, step }, null),
      );
    }
  }
}

/** Every paper of a job, and what stands over its carcasses. */
async function sayPapers(job: JobAnalysis): Promise<void> {
  // Sheets take long to lay out, and say the same of few panels as of many.
  const papers = PAPER_NAMES.filter((name) => !['sheet-layouts', 'cost'].includes(name) || job.carcasses.length < 9);
  const paperOf = papersOf(job, coverSolver);
  for (const name of papers) {
    const paper = await paperOf(name);
    if (paper !== null) asText(paper);
  }
  panelsOf(job).inWords();
  jointsOf(job).inWords();
  mapsToLookAt(job, 'kitchen', [], (carcass, panel) => `${carcass}-${panel}`);
  carcassTotals(job);
  planTotals(job.plan());
  findingTotals(1, allFindings({ kind: 'job', analysis: job }));
  for (const { name, carcass, boring, findings, spec } of job.carcasses) {
    if (carcass !== null && boring !== null && spec !== null)
      allPanelsScene({ name, carcass, boring, findings, note: spec.note, reader: job.unit });
  }
}

/** Why there is nothing to show of a file, or an older drawing. */
function sayNothing(): void {
  const document = {
    uri: 'file:///x',
    version: 1,
    toRange: () => ({ start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }),
  };
  const params = { uri: document.uri, view: 'panel', position: null, carcass: null, panel: null } as const;
  const shop = { kind: 'shop', analysis: readShop(NEUTRAL_SHOP_TEXT) } as unknown as AnalysedFile;
  drawingOf(shop, document, params, null);
  boxesOf(shop, document, { ...params, what: 'carcass' }, null);
  sayWalls(document);
  listSetUps(shop, document, null, null);
  const edits = opened();
  for (const text of [SOUND, SOUND.replace('width: 600', 'width: wide'), SOUND.replace(/ {2}bar:[^]*/, '  bar\n')]) {
    const analysis = edits(text);
    for (const carcass of ['sink', 'bar']) drawingOf({ kind: 'job', analysis }, document, { ...params, carcass }, null);
  }
  for (const text of ['carcasses:\n', 'carcasses: { a: { kind: base } }\n', '', BARE]) {
    const analysis = analyse(text);
    drawingOf({ kind: 'job', analysis }, document, params, null);
    listSetUps({ kind: 'job', analysis }, document, analysis.plan(), null);
    replayedPlan(analysis);
  }
  const kitchen = analyse(demoText('kitchen.carcass.yaml'));
  const plan = kitchen.plan();
  const address = { uri: document.uri, setUp: 'none', carcass: 'none', panel: 'left', step: 0 };
  drawStep(kitchen, document, plan, address, null);
  drawStep(kitchen, document, plan, { ...address, carcass: kitchen.carcasses[0]!.name }, null);
}

/** What cabinets in three dimensions say: one by itself, with doors, and many along a wall; and a shelf that can be moved. */
function sayWalls(document: Parameters<typeof boxesOf>[1]): void {
  const analysis = analyse(
    'carcasses:\n  low: { kind: base, width: 600, doors: pair, loose-shelves: [516] }\n  high: { kind: wall, width: 400, count: 20 }\n',
  );
  for (const what of ['carcass', 'wall'] as const)
    boxesOf({ kind: 'job', analysis }, document, { uri: document.uri, what, position: null, carcass: 'low' }, null);
  const params = { uri: document.uri, view: 'panel', position: null, carcass: 'low', panel: 'left' } as const;
  drawingOf({ kind: 'job', analysis }, document, { ...params, medium: 'screen' }, null);
}

/** What the view of a shop’s machines says: of whole ones, of one whose text has an error, and of none. */
function sayMachines(): void {
  const engine = new Engine({ readShop: () => ({ ok: false, message: asMessage('none') }) });
  const document = {
    uri: 'file:///x.shop.yaml',
    version: 1,
    toRange: (start: number, end: number) => ({
      start: { line: 0, character: start },
      end: { line: 0, character: end },
    }),
  };
  const params = { uri: document.uri };
  for (const text of [demoText('shed.shop.yaml'), 'title: Yard\n', 'vertical-heads:\n'])
    shopView({ kind: 'shop', analysis: engine.analyseShop(document.uri, text) }, document, params);
  shopView({ kind: 'job', analysis: analyse(SOUND) }, document, params);
}

/** What a shop is told of the load of bits that its joints share, and how it differs from that of an earlier file. */
function saySharedLoads(): void {
  const shared = NEUTRAL_SHOP_TEXT;
  const none = 'habits: { share-places: no }\n';
  const moved = shared.replace('first-dowel: 21', 'first-dowel: 37');
  sharedLoadOf(none, null);
  sharedLoadOf(shared, null);
  sharedLoadOf(shared, shared);
  sharedLoadOf(shared, none);
  sharedLoadOf(moved, shared);
  const batch = (many: number): string => `habits: { sizes: { base: { batch: ${many} }, wall: { batch: ${many} } } }\n`;
  for (const many of [1, 3, 20]) sharedLoadOf(batch(many), null);
  const short = demoText('shed.shop.yaml').replaceAll('spindles: 21', 'spindles: 9');
  const sizes = 'base: { depth: 268, batch: 10 }, wall: { depth: 140, batch: 2 }';
  sharedLoadOf(short.replace('habits:\n', `habits:\n  sizes: { ${sizes} }\n`), null);
}
