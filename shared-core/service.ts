// All that the language server and the command line may know of the core: questions about a file, answered in words or as
// plain data, with offsets in its text.

export { Engine } from './engine.js';
export type { JobAnalysis, ShopAnalysis, ShopReading } from './engine.js';

// What stands at a place, and what is said of it.
export { explain } from './service/hover.js';
export { hintsIn, HINT_CHOICES, type HintChoice, type ShownHint } from './service/hints.js';
export { offersAt, type OfferSort, type PlacedOffer } from './service/completion.js';
export { outlineOf, type Outlined } from './service/outline.js';
export { spansAt } from './service/spans.js';
export { writingHelpAt, type WritingHelp } from './service/writing-help.js';
export { tokensOf, type Token, type TokenSort } from './service/tokens.js';
export { foldsOf } from './document/folds.js';
export { formatEdits, someOf, type Blanks } from './document/format.js';
export { lineEnd, lineStart } from './document/lines.js';

// Words for a person who reads them.
export { tell } from './words/message.js';

// Findings and repairs.
export type { WantedFindings } from './findings/wanted.js';
export type { Wishes } from './engine/wishes.js';
export type { LengthWish } from './length/reader.js';
export {
  knownFindings,
  allFindings,
  errorsOf,
  findingTotals,
  findingWords,
  type ToldFinding,
} from './service/findings.js';
export type { Severity } from './findings/finding.js';
export { editsOfBatch, editsWithoutChoice, repairsFor, type BatchKey } from './service/repairs.js';
export { refactorsIn } from './service/refactors.js';
export type { TextEdit } from './document/pieces.js';

// Files to begin with, and what may stand in them.
export { templateOf } from './service/templates.js';
export { builtInShop, schemaOf } from './service/published.js';
export { REFERENCE_PAGES, referenceSite, referenceText, type ReferencePage } from './service/reference/site.js';
export { sharedLoadOf } from './service/shared-load.js';

// Names, and where they are given and asked for.
export { namesAround, namesOfText, shopNamed, writtenInPlace, type NamesOfText } from './service/names.js';
export { isFixed, isLocal, sameThing, type Mention } from './mentions/mention.js';
export { nearestName } from './schema/nearest.js';

// Drawings, set-ups and their order.
export { drawingOf, type DrawnDocument } from './service/drawing.js';
export { boxesOf } from './service/box-view.js';
export { shopView } from './service/shop-view.js';
export { shelfMoved } from './service/move-shelf.js';
export { pictureOf } from './service/picture.js';
export { drawStep } from './service/machine-step.js';
export { listSetUps } from './service/set-ups.js';
export { carcassTotals, firstWords, planTotals } from './service/totals.js';
export { bestOrder, type OrderTask, type Plan, type SetUpOrder } from './machining/plan/plan.js';
export { sawOf } from './sheets/board-problem.js';
export type { CoverProgram, CoverSolver } from './sheets/plan/cover.js';

// What is printed of a job.
export type { Answer } from './service/answer.js';
export { jointsOf } from './service/joints.js';
export { cutListOf, layoutsOf, usualEffort, type EffortOn } from './service/layouts.js';
export { mapsToLookAt } from './service/bore-maps.js';
export { panelsOf, unbuiltOf } from './service/panels.js';
export {
  PAGE_NAMES,
  PAPER_FORMS,
  panelDrawings,
  PAPER_NAMES,
  laidOutOnce,
  papersOf,
  type LayOut,
  schemaOfPapers,
  writePaper,
  type Lettering,
  type PageName,
  type Print,
} from './service/papers.js';
export type { FaceCutter } from './drawing/render/embedded-face.js';
export { readCode } from './papers/panel-labels/code-text.js';
export type {
  FileForm,
  PaperName,
  PapersMethod,
  PapersParams,
  PapersReply,
  ScannedMethod,
  ScannedParams,
  ScannedReply,
  WantedPapers,
} from './papers/asked.js';
export { replayedPlan } from './service/set-up-plan.js';

// What client and server say to each other about drawings.
export type { DrawingParams, DrawingReply } from './drawing/messages/drawing.js';
export type { MoveShelfParams, MoveShelfReply } from './drawing/messages/shelves.js';
export type { BoxParams, BoxReply } from './drawing/messages/box-view.js';
export type { ShopViewParams, ShopViewReply } from './drawing/messages/shop-view.js';
export type { PictureParams, PictureReply } from './drawing/messages/picture.js';
export type { MachineStepParams, MachineStepReply } from './drawing/messages/machine-view.js';
export type { SetUpsReply } from './drawing/messages/set-ups.js';
