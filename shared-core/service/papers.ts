import type { JobAnalysis } from '../engine.js';
import { keepsFromBander } from '../findings/rules/panel-out-of-range.js';
import type { FileForm, PaperName } from '../papers/asked.js';
import { assemblyPaper } from '../papers/assembly/paper.js';
import { bandingPaper } from '../papers/banding-list/paper.js';
import { printedBoreMaps } from '../papers/bore-maps/printed.js';
import type { BuiltCarcass } from '../papers/built.js';
import { checkingPaper } from '../papers/checking/paper.js';
import { cutListPaper } from '../papers/cut-list/paper.js';
import { costOf } from '../machining/plan/cost.js';
import { costItems } from '../papers/cost/cost.js';
import { costPaper } from '../papers/cost/paper.js';
import { THINGS } from '../papers/hardware-list/messages.js';
import { hardwareNeeded, hardwarePaper } from '../papers/hardware-list/paper.js';
import { paragraph, type Block, type Paper } from '../papers/paper.js';
import { asCsv } from '../papers/render/csv.js';
import { asHtml } from '../papers/render/html.js';
import { asJson, paperSchema } from '../papers/render/json.js';
import { PAGE_SIZES, type PageName } from '../papers/render/page-size.js';
import { asText } from '../papers/render/text.js';
import { cutList } from '../sheets/cut-list.js';
import type { FaceCutter } from '../drawing/render/embedded-face.js';
import { toSvg } from '../drawing/render/svg.js';
import type { CoverSolver } from '../sheets/plan/cover.js';
import { tell } from '../words/message.js';
import { languageSpoken } from '../words/spoken.js';
import { asItIs, labels, type Told } from '../words/told.js';
import { PAPER_TITLES } from '../words/paper-titles/en.js';
import { say } from './messages.js';
import { mapsOf } from './bore-maps.js';
import { errorsOf, findingWords, toldOf } from './findings.js';
import { layoutsOf, usualEffort, type EffortOn, type Layouts } from './layouts.js';
import { replayedPlan } from './set-up-plan.js';

export const TITLES: Readonly<Record<PaperName, Told>> = labels('paper-titles', PAPER_TITLES);

/** Every paper that can be made of a job. */
export const PAPER_NAMES = Object.keys(TITLES) as readonly PaperName[];

/** Lays out the sheets of a job where nobody has asked for that before. */
export type LayOut = () => Promise<Layouts | null>;

export function laidOutOnce(analysis: JobAnalysis, solver: () => Promise<CoverSolver>, effortOn: EffortOn): LayOut {
  let laidOut: Promise<Layouts | null> | undefined;
  return () => (laidOut ??= layoutsOf(analysis, solver, effortOn));
}

/**
 * The papers of a job by name; null where the shop has no machine for one. Sheets are laid out once, when the first paper asks, so
 * no two papers can tell of different layouts.
 * @param solver called only where sheets are laid out
 * @param effortOn how long layouts are sought
 * @param layouts those of the same job for another reader, so that they are not sought again
 */
export function papersOf(
  analysis: JobAnalysis,
  solver: () => Promise<CoverSolver>,
  effortOn: EffortOn = usualEffort,
  layouts: LayOut = laidOutOnce(analysis, solver, effortOn),
): (name: PaperName) => Promise<Paper | null> {
  const { head } = analysis;
  const over = headOf(analysis);
  return async (name) => {
    const title =
      head.title === '' ? TITLES[name] : tell(say.titled({ paper: TITLES[name], job: head.title }), analysis.reader);
    const paper = await paperAlone(name, title, analysis, layouts);
    return paper === null ? null : { ...paper, blocks: [...over, ...paper.blocks] };
  };
}

/** What stands over every paper of the job: that it has errors, and whose shop it is. */
function headOf(analysis: JobAnalysis): readonly Block[] {
  const errors = errorsOf(analysis);
  const { shop, reader } = analysis;
  return [
    ...(errors === 0 ? [] : [paragraph(tell(say.withErrors({ errors }), reader))]),
    ...(shop.title === '' ? [] : [paragraph(asItIs(shop.title))]),
  ];
}

/** The same without its head. */
async function paperAlone(name: PaperName, title: Told, analysis: JobAnalysis, layouts: LayOut): Promise<Paper | null> {
  const { shop, reader } = analysis;
  const built = builtOf(analysis);
  switch (name) {
    case 'cut-list':
      return cutListPaper(cutList(built), shop, title, reader);
    case 'sheet-layouts':
      return titled((await layouts())?.paper(reader), title);
    case 'banding-list':
      return bandingPaper(built, shop.habits.bandAllowance, bandTroubles(analysis), title, reader);
    case 'set-ups':
      return titled(replayedPlan(analysis).printed(), title);
    case 'bore-maps':
      return printedBoreMaps(drawn(analysis), title);
    case 'hardware-list':
      return hardwarePaper(hardwareNeeded(built, shop, reader), title);
    case 'assembly':
      return assemblyPaper(built, shop, title, reader);
    case 'checking':
      return checkingPaper(built, shop.tolerances, title, reader);
    case 'panel-labels':
      return panelLabels(analysis, built, title);
    case 'cost':
      return costOfJob(analysis, built, title, await layouts());
  }
}

function costOfJob(
  analysis: JobAnalysis,
  carcasses: readonly BuiltCarcass[],
  title: Told,
  layouts: Layouts | null,
): Paper {
  const { shop, reader } = analysis;
  const items = costItems({
    carcasses,
    layouts,
    hardware: hardwareNeeded(carcasses, shop, reader),
    pins: THINGS.pins,
    frontScrews: THINGS.frontScrews,
    boring: costOf(analysis.plan(), shop),
    shop,
  });
  return costPaper(items, layouts !== null, title);
}

async function panelLabels(analysis: JobAnalysis, carcasses: readonly BuiltCarcass[], title: Told): Promise<Paper> {
  const { head, shop, reader, uri } = analysis;
  const { labelsPaper } = await import('../papers/panel-labels/paper.js');
  const file = fileNameOf(uri);
  const job = {
    carcasses,
    boards: cutList(carcasses),
    setUps: analysis.plan().setUps.map(({ setUp }) => setUp),
    file,
    sheet: shop.labelSheet,
  };
  return labelsPaper(job, title, asItIs(head.title === '' ? file : head.title), reader);
}

/** The last step of a URI, its escapes undone. */
function fileNameOf(uri: string): string {
  const last = uri.split('/').at(-1) ?? uri;
  try {
    return decodeURIComponent(last);
  } catch {
    return last;
  }
}

const titled = (paper: Paper | undefined, title: Told): Paper | null =>
  paper === undefined ? null : { ...paper, title };

function builtOf({ carcasses }: JobAnalysis): readonly BuiltCarcass[] {
  return carcasses.flatMap(({ name, spec, carcass, boring }) =>
    spec === null || carcass === null || boring === null ? [] : [{ name, spec, carcass, boring }],
  );
}

function drawn(analysis: JobAnalysis): Parameters<typeof printedBoreMaps>[0] {
  return mapsOf(analysis).flatMap(({ name, panels }) =>
    panels.length === 0 ? [] : [{ name, scenes: panels.map(({ scene }) => scene) }],
  );
}

/** Findings that say what the bander cannot take. */
function bandTroubles(analysis: JobAnalysis): readonly Told[] {
  const found = analysis.findings().filter(({ finding }) => keepsFromBander(finding));
  return toldOf(analysis, found).flatMap((one) => (one === null ? [] : [findingWords(one)]));
}

/** Every form that papers can be written in. */
export const PAPER_FORMS: readonly FileForm[] = ['pdf', 'html', 'csv', 'json', 'text', 'svg', 'dxf'];

/** Whole papers are written as one of these. */
type PaperForm = Exclude<FileForm, 'svg' | 'dxf'>;

/** The JSON Schema of papers that are written as JSON. */
export const schemaOfPapers = (): object => paperSchema(PAPER_NAMES);

/** What a PDF is printed on and with. */
export interface Print {
  readonly page: PageName;
  readonly fonts: { readonly regular: Uint8Array; readonly bold: Uint8Array };
}

/** What drawings are lettered with; each is asked only where it is needed. */
export interface Lettering {
  readonly print: () => Print;
  readonly face: () => FaceCutter | null;
}

export const PAGE_NAMES = Object.keys(PAGE_SIZES) as readonly PageName[];
export type { PageName, Paper };

/** Writes a paper; null where the form has nothing of it. */
export async function writePaper(
  paper: Paper,
  name: PaperName,
  form: PaperForm,
  { print, face }: Lettering,
): Promise<string | Uint8Array | null> {
  switch (form) {
    case 'html':
      return asHtml(paper, face());
    case 'text':
      return asText(paper);
    case 'csv':
      return asCsv(paper);
    case 'json':
      return asJson(paper, name);
    case 'pdf': {
      // Loaded only for those who print.
      const { asPdf } = await import('../papers/render/pdf/pdf.js');
      const { page, fonts } = print();
      return asPdf(paper, { page: PAGE_SIZES[page], fonts, language: languageSpoken() });
    }
  }
}

/** A drawing of one panel, for a file of its own. */
export interface PanelDrawing {
  readonly carcass: string;
  readonly panel: string;
  readonly content: string;
}

/** A drawing of every panel that can be worked out: its bore map as SVG, or its outline and bores as DXF. */
export async function panelDrawings(
  analysis: JobAnalysis,
  form: 'svg' | 'dxf',
  face: Lettering['face'],
): Promise<readonly PanelDrawing[]> {
  if (form === 'svg') {
    const cut = face();
    return mapsOf(analysis).flatMap(({ name, panels }) =>
      panels.map(({ key, scene }) => ({ carcass: name, panel: key, content: toSvg(scene, { face: cut }) })),
    );
  }
  const { panelDxf } = await import('../papers/render/dxf/panel-dxf.js');
  return builtOf(analysis).flatMap(({ name, carcass, boring }) =>
    carcass.panels.map((panel) => ({ carcass: name, panel: panel.key, content: panelDxf(panel, boring.bores) })),
  );
}
