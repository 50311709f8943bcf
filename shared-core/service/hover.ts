import { wingsOf, writtenSize } from '../carcass/outer-size.js';
import { loadWords } from './load-words.js';
import { HEADS, hover as say } from './messages.js';
import { listed, sentence } from '../words/english.js';
import { CARCASSES_KEY } from '../document/outline.js';
import type { Panel } from '../carcass/model.js';
import type { Path, Place } from '../document/place.js';
import type { ScalarNode } from '../document/tree.js';
import { holeGroups, tableCells, tableHeads } from '../drawing/bore-map/hole-table.js';
import { bandedEdges } from '../drawing/bore-map/bore-map.js';
import { panelPicture } from './panel-picture.js';
import { edgeWord, endWord } from '../drawing/words.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import type { Cursor } from '../engine/cursor.js';
import { cursorAt, descend, namesPanels, panelsAt, rowFacts } from '../engine/cursor.js';
import { unitFor, writtenUnit, type Reader } from '../length/reader.js';
import { parseLength } from '../length/parse.js';
import { inOtherUnit, inOneNotation, showLength } from '../length/show.js';
import { reachAt, reachInJob, reachWords } from '../job/reach.js';
import type { CarcassKind } from '../shop/model.js';
import { unusedWords } from '../shop/unused.js';
import { whenLeftOut } from '../job/when-left-out.js';
import { carcassSchema, jobSchema } from '../job/schema.js';
import { schemaAt } from '../schema/at.js';
import type { NameOf, Schema } from '../schema/schema.js';
import { shopSchema } from '../shop/schema.js';
import { tell, type Message } from '../words/message.js';
import { code, paragraphs, plain, table, withCode } from './markdown.js';
import type { Span } from '../document/structure.js';
import type { AnalysedFile, JobFile, ShopFile } from './file.js';
import { pinNumbers } from '../papers/pins.js';
import {
  boresAt,
  onMachines,
  isAboutRows,
  jointsOf,
  pinHoles,
  rowStrokeWords,
  setUpTable,
  stepsBoring,
  stepsOf,
  stepTable,
  toleranceWords,
} from './machine-words.js';
import { anchorAt } from './reference/keys.js';
import type { ReferencePage } from './reference/site.js';
import { carcassesFor, formOf, namesOf } from './words.js';
import { worded, type Told } from '../words/told.js';

/** More panels than this are told by their sizes alone. */
const MOST_IN_FULL = 2;

/** What is said of a place of a file. */
export interface Explained {
  /** Markdown, with the owner's texts shown as they are. */
  readonly words: string;
  /** The key or value that it is about; null for no one in particular. */
  readonly about: Span | null;
  /** Where the reference tells more of it; null where nothing does. */
  readonly reference: { readonly page: ReferencePage; readonly anchor: string } | null;
}

/**
 * What stands at an offset: the key's meaning, the value's, and the panels, rows and bores that come of it.
 * @param pictures whether the reader is shown those that stand in the words themselves
 */
export function explain(file: AnalysedFile, offset: number, pictures = false): Explained | null {
  return file.kind === 'job' ? jobHover(file, offset, pictures) : shopHover(file, offset);
}

function jobHover(file: JobFile, offset: number, pictures: boolean): Explained | null {
  const { analysis } = file;
  const { reader, shop } = analysis;
  const cursor = cursorAt(analysis, offset);
  const carcass = cursor.carcass === null ? undefined : analysis.carcasses[cursor.carcass];
  const words = meaning(
    cursor.carcass === null ? jobSchema : carcassSchema,
    cursor,
    reader,
    (of) => (of === 'carcass' ? carcassesFor(analysis, null) : namesOf(shop, of, reader)),
    leftOut(file, cursor),
  );
  const things = carcass === undefined || isBlank(cursor) ? '' : carcassWords(analysis, carcass, cursor.path, pictures);
  return answer(file, paragraphs(words, things), cursor);
}

/** Where the key under the pointer counts, and what stands for it where it is left out. */
function leftOut({ analysis }: JobFile, { carcass, key, path }: Cursor): string {
  const { reader, shop } = analysis;
  if (key === null) return '';
  const said = (reach: Message | null, own: Path, kind: CarcassKind | null): string => {
    const words = whenLeftOut(own, kind, shop.habits);
    return paragraphs(...[reach, words].map((one) => (one === null ? '' : withCode(tell(one, reader)))));
  };
  if (carcass !== null)
    return said(reachWords(reachAt(path)), path, analysis.carcasses[carcass]?.spec?.kind.value ?? null);
  return path[0] === 'defaults' ? said(reachInJob(path), path.slice(1), null) : '';
}

/** A line without key or value, such as a comment: nothing is under the pointer. */
function isBlank({ key, scalar, path }: Cursor): boolean {
  return key === null && scalar === null && path.length === 0;
}

function shopHover(file: ShopFile, offset: number): Explained | null {
  const { root, shop, reader } = file.analysis;
  const found = descend(root, offset, []);
  const unused = unusedWords(found.path);
  return answer(
    file,
    meaning(
      shopSchema,
      found,
      reader,
      (of) => namesOf(shop, of, reader),
      unused === null ? '' : withCode(tell(unused, reader)),
    ),
    {
      ...found,
      part: 'shop',
      carcass: null,
    },
  );
}

function answer(
  file: AnalysedFile,
  value: string,
  {
    key,
    scalar,
    path,
    carcass,
    part,
  }: Pick<Cursor, 'key' | 'scalar' | 'path' | 'carcass'> & { readonly part: Place['part'] },
): Explained | null {
  if (value === '') return null;
  const place = key?.place ?? scalar?.place;
  if (place === undefined) return { words: value, about: null, reference: null };
  const { start, end } = file.kind === 'shop' ? place : file.analysis.locateWritten({ ...place, part }, carcass);
  return { words: value, about: { start, end }, reference: referenceAt(file.kind, path, carcass) };
}

/** A path in a carcass starts at the carcass. */
function referenceAt(kind: AnalysedFile['kind'], path: Path, carcass: number | null): Explained['reference'] {
  const whole = carcass === null ? path : [CARCASSES_KEY, '', ...path];
  const anchor = whole.length === 0 ? null : anchorAt(kind === 'job' ? jobSchema : shopSchema, whole);
  return anchor === null ? null : { page: `${kind}-files`, anchor };
}

/** What has names of a sort, each with its line. */
type Known = (of: NameOf) => readonly { readonly name: string; readonly line: Told }[];

/** What the schema says of the place, and what the value is in other words. */
function meaning(
  schema: Schema,
  { path, key, scalar }: Pick<Cursor, 'path' | 'key' | 'scalar'>,
  reader: Reader,
  known: Known,
  without = '',
): string {
  const spot = path.length === 0 ? null : schemaAt(schema, path);
  if (spot === null || (key === null && scalar === null)) return '';
  const name = path.findLast((step) => typeof step === 'string');
  const title = name === undefined ? '' : `**${plain(name)}**: `;
  const form = key === null ? '' : `${sentence(formOf(spot.schema, reader))}.`;
  return paragraphs(
    `${title}${worded('keys', spot.about)}`,
    without,
    form,
    scalar === null ? '' : valueWords(spot.schema, scalar, reader, known),
  );
}

function valueWords(schema: Schema, scalar: ScalarNode, reader: Reader, known: Known): string {
  const text = scalar.text.trim();
  switch (schema.type) {
    case 'either':
      return schema.of.map((one) => valueWords(one, scalar, reader, known)).find((words) => words !== '') ?? '';
    case 'choice': {
      const about = Object.hasOwn(schema.options, text) ? schema.options[text] : undefined;
      return about === undefined ? '' : `${code(text)}: ${worded('keys', about)}`;
    }
    case 'name': {
      const named = known(schema.of).find(({ name }) => name === text);
      return named === undefined ? '' : `${code(text)}: ${plain(named.line)}`;
    }
    case 'length': {
      const unit = writtenUnit(reader);
      const parsed = parseLength(text, unit);
      // To a reader of millimetres only what is written in inches needs other words.
      const isPlain = unit === 'mm' && unitFor(reader) === 'mm' && !/[a-z"'′″]/i.test(text.replace(/mm$/i, ''));
      return parsed.ok && !isPlain ? `${showLength(parsed.value, reader)} = ${inOtherUnit(parsed.value, reader)}` : '';
    }
    default:
      return '';
  }
}

function carcassWords(analysis: JobAnalysis, carcass: CarcassAnalysis, path: Path, pictures: boolean): string {
  if (carcass.spec === null || carcass.carcass === null) {
    return tell(say.notWorkedOut(), 'mm');
  }
  const { reader } = analysis;
  const panels = panelsAt(carcass, path);
  if (!namesPanels(carcass, path)) {
    // All panels and set-ups are told at the carcass's name; at a plain key they would drown what it means.
    const loads = loadWords(analysis, carcass, path);
    if (path.length > 0) return paragraphs(boxLine(carcass, reader), loads);
    return paragraphs(boxLine(carcass, reader), loads, sizeTable(panels, reader), carcassOnMachines(analysis, carcass));
  }
  const rows = panels.map((panel) => rowWords(analysis, carcass, panel)).filter((words) => words !== '');
  const picture = pictures && panels.length <= MOST_IN_FULL ? panelPicture(analysis, carcass, panels[0]!) : '';
  if (isAboutRows(path)) return paragraphs(picture, ...rows);
  const parts =
    panels.length <= MOST_IN_FULL
      ? panels.map((panel) => panelWords(analysis, carcass, panel))
      : [
          sizeTable(panels, reader),
          panels
            .map((panel) => pinLine(carcass, panel))
            .join('\n')
            .trim(),
          ...rows,
        ];
  return paragraphs(picture, ...parts, panelsOnMachines(analysis, carcass, path, panels));
}

/** 'Its pins stand in hole 11, counted from the bottom end.' */
function pinSentence(carcass: CarcassAnalysis, panel: Panel): string {
  const holes = pinNumbers(pinHoles(carcass, [panel]));
  return holes.length === 0 ? '' : plain(tell(say.pins({ holes }), 'mm'));
}

function pinLine(carcass: CarcassAnalysis, panel: Panel): string {
  const holes = pinNumbers(pinHoles(carcass, [panel])).map(({ number, uprights }) => ({
    number,
    uprights: uprights.map(plain),
  }));
  return holes.length === 0 ? '' : tell(say.pinsOf({ panel: plain(panel.key), holes }), 'mm');
}

/** The set-ups that the carcass needs, and what its joints come out like. */
function carcassOnMachines(analysis: JobAnalysis, carcass: CarcassAnalysis): string {
  const steps = stepsOf(analysis, carcass);
  if (steps.length === 0) return '';
  return paragraphs(onMachines(steps), setUpTable(steps, analysis.shopReader), toleranceWords(analysis, carcass, null));
}

/** The strokes that the text at a path causes, and what the joints of its panels come out like. */
function panelsOnMachines(
  analysis: JobAnalysis,
  carcass: CarcassAnalysis,
  path: Path,
  panels: readonly Panel[],
): string {
  const steps = stepsBoring(stepsOf(analysis, carcass), boresAt(carcass, path, panels));
  if (steps.length === 0) return '';
  return paragraphs(
    onMachines(steps),
    stepTable(carcass, steps, analysis.shopReader),
    toleranceWords(analysis, carcass, jointsOf(carcass, panels)),
  );
}

/** '**sink**: base carcass, 600 × 720 × 560 mm, plinth 120 mm; 8 panels, 132 bores'. */
function boxLine({ name, spec, carcass, boring }: CarcassAnalysis, reader: Reader): string {
  if (spec === null || carcass === null) return '';
  const told = say.carcass({
    name: plain(name),
    count: carcass.count,
    kind: spec.kind.value,
    size: writtenSize(spec),
    wings: wingsOf(spec),
    plinth: spec.plinth.value,
    panels: carcass.panels.length,
    bores: boring?.bores.length ?? 0,
  });
  return tell(told, reader);
}

function sizeTable(panels: readonly Panel[], reader: Reader): string {
  const write = inOneNotation(
    panels.flatMap((panel) => [...finished(panel), ...toCut(panel)]),
    reader,
  );
  const sizes = (lengths: readonly number[]): string => lengths.map(write).join(' × ');
  return table(
    [
      { title: HEADS.panel },
      { title: HEADS.board },
      { title: tell(say.finished(), reader), figures: true },
      { title: tell(say.toCut(), reader), figures: true },
    ],
    panels.map((panel) => [panel.key, panel.board.name, sizes(finished(panel)), sizes(toCut(panel))]),
  );
}

const finished = ({ length, width, thickness }: Panel): readonly number[] => [length, width, thickness];
const toCut = ({ cutLength, cutWidth }: Panel): readonly number[] => [cutLength, cutWidth];

/** Columns of the hole table, its number left out, that stand to the right. */
const FIGURES: ReadonlySet<number> = new Set([0, 2, 3, 4, 5]);

function panelWords(analysis: JobAnalysis, carcass: CarcassAnalysis, panel: Panel): string {
  const { reader } = analysis;
  if (carcass.carcass === null || carcass.boring === null) return '';
  const banded = bandedEdges(panel);
  const head = say.panel({
    panel: plain(panel.key),
    board: code(panel.board.name),
    size: finished(panel),
    cut: toCut(panel),
    banded: banded === null ? null : plain(banded),
  });
  const groups = holeGroups(carcass.carcass, carcass.boring, panel, reader);
  const holes =
    groups.length === 0
      ? tell(say.nothingBored(), reader)
      : table(
          tableHeads(
            reader,
            [edgeWord(panel, 'front')],
            endWord(panel, 'reference-end'),
            groups.some(({ bores }) => bores.some(({ face }) => face.endsWith('-end'))),
          )
            .slice(1)
            .map((title, column) => ({ title, figures: FIGURES.has(column) })),
          groups.map(({ line }) => tableCells(line).slice(1)),
        );
  return paragraphs(
    tell(head, reader),
    jointWords(carcass, panel),
    pinSentence(carcass, panel),
    rowWords(analysis, carcass, panel),
    holes,
  );
}

/** 'Joined to bottom and top by dowel-8x30.' */
function jointWords({ carcass }: CarcassAnalysis, panel: Panel): string {
  const byFitting = new Map<string, string[]>();
  for (const { endPanel, facePanel, fitting } of carcass?.joints ?? []) {
    if (endPanel !== panel.key && facePanel !== panel.key) continue;
    const other = endPanel === panel.key ? facePanel : endPanel;
    byFitting.set(fitting.name, [...(byFitting.get(fitting.name) ?? []), other]);
  }
  return [...byFitting]
    .map(([fitting, others]) => tell(say.joined({ panels: plain(listed(others)), fitting: code(fitting) }), 'mm'))
    .join(' ');
}

/** Where each row of a panel stands, and how it is bored. */
function rowWords(analysis: JobAnalysis, carcass: CarcassAnalysis, panel: Panel): string {
  const lines = rowFacts(carcass, panel, analysis.shop).map(({ row, rest, balanced }) => {
    const told = say.row({
      panel: plain(panel.key),
      line: row.line,
      count: row.count,
      diameter: row.diameter,
      pitch: row.pitch,
      u: row.u,
      first: { at: row.offset, end: endWord(panel, 'reference-end') },
      last: { at: rest, end: endWord(panel, 'far-end') },
      balanced,
    });
    return tell(told, analysis.reader);
  });
  return [...lines, rowStrokeWords(analysis, carcass, panel)].filter((line) => line !== '').join('\n');
}
