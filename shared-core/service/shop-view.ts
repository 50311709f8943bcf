import type { MapEntry, TreeNode } from '../document/tree.js';
import type { TextRange } from '../drawing/messages/drawing.js';
import type { ShopMachineView, ShopViewParams, ShopViewReply } from '../drawing/messages/shop-view.js';
import { SCREEN } from '../drawing/scene/scene.js';
import { factsOf } from '../drawing/shop-view/facts.js';
import { say } from '../drawing/shop-view/messages.js';
import { shopMachineScene } from '../drawing/shop-view/scene.js';
import { sourceAt, sourceOf } from '../drawing/shop-view/source-of.js';
import { KIND_WORDS } from '../shop/kind-words.js';
import type { Machine } from '../shop/model.js';
import { SECTION_OF } from '../shop/sections.js';
import { tell } from '../words/message.js';
import type { DrawnDocument } from './drawing.js';
import type { AnalysedFile, ShopFile } from './file.js';

/** Every machine of a shop file as its operator sees it, with what leads from the drawing to the text and back. */
export function shopView(
  file: AnalysedFile,
  { uri, version, toRange }: DrawnDocument,
  { width }: ShopViewParams,
): ShopViewReply {
  if (file.kind === 'job') {
    return { kind: 'nothing', uri, version, reason: tell(say.ofJob(), file.analysis.reader) };
  }
  const { root, shop, reader } = file.analysis;
  const room = typeof width === 'number' && width >= 40 && width <= 4000 ? width : SCREEN.pane.width;
  const machines = [...drawnOf(file, room), ...unreadOf(file)];
  if (machines.length === 0) return { kind: 'nothing', uri, version, reason: tell(say.noMachines(), reader) };
  const ranges = rangesOf(root, toRange);
  // As they are written; those of the built-in shop come last.
  const lineOf = ({ source }: ShopMachineView): number => ranges[source]?.start.line ?? Infinity;
  machines.sort((a, b) => (lineOf(a) === lineOf(b) ? 0 : lineOf(a) - lineOf(b)));
  return { kind: 'shop', uri, version, title: shop.title, machines, ranges };
}

function drawnOf({ analysis: { shop, root, reader } }: ShopFile, room: number): ShopMachineView[] {
  const own = (machine: Machine): boolean => entryAt(root, [SECTION_OF[machine.kind], machine.name]) !== null;
  return [...shop.machines.values()].map((machine) => ({
    name: machine.name,
    kindWords: own(machine)
      ? KIND_WORDS[machine.kind]
      : tell(say.ofBuiltInShop({ kind: KIND_WORDS[machine.kind] }), reader),
    facts: factsOf(machine, reader),
    scene: shopMachineScene(machine, reader, room),
    trouble: null,
    source: sourceOf(machine),
  }));
}

/** Machines whose text has a fault, which is told in their place. */
function unreadOf({ analysis: { shop, root, findings, reader } }: ShopFile): ShopMachineView[] {
  return [...(shop.unread?.machines ?? [])].map(([name, kind]) => {
    const place = entryAt(root, [SECTION_OF[kind], name])?.place;
    const first = findings.find(
      (one) => one.severity === 'error' && place && place.start <= one.place.start && one.place.end <= place.end,
    );
    const why = tell(first?.message ?? say.hasFault(), reader);
    return {
      name,
      kindWords: KIND_WORDS[kind],
      facts: [],
      scene: null,
      trouble: why,
      source: sourceOf({ kind, name }),
    };
  });
}

/** The entries of every machine, of its keys, and of its stops and clamps. */
function rangesOf(
  root: TreeNode | null,
  toRange: (start: number, end: number) => TextRange,
): Readonly<Record<string, TextRange>> {
  const ranges: Record<string, TextRange> = {};
  const note = (path: readonly string[], { place }: MapEntry): void => {
    ranges[sourceAt(path)] = toRange(place.start, place.end);
  };
  for (const section of Object.values(SECTION_OF)) {
    for (const machine of entriesOf(entryAt(root, [section])?.value)) {
      note([section, machine.key], machine);
      for (const part of entriesOf(machine.value)) {
        note([section, machine.key, part.key], part);
        if (part.key !== 'stops' && part.key !== 'clamps') continue;
        for (const one of entriesOf(part.value)) note([section, machine.key, part.key, one.key], one);
      }
    }
  }
  return ranges;
}

const entriesOf = (node: TreeNode | null | undefined): readonly MapEntry[] =>
  node?.kind === 'map' ? node.entries : [];

function entryAt(root: TreeNode | null, path: readonly string[]): MapEntry | null {
  let entry: MapEntry | null = null;
  for (const key of path) {
    const node: TreeNode | null = entry === null ? root : entry.value;
    entry = entriesOf(node).find((one) => one.key === key) ?? null;
    if (entry === null) return null;
  }
  return entry;
}
