import type { Surface } from '../../boring/model.js';
import type { BorePurpose } from '../../fittings/names.js';
import type { Place } from '../../document/place.js';
import type { Severity } from '../../findings/finding.js';
import type { Reader } from '../../length/reader.js';
import type { Micrometres } from '../../length/units.js';
import type { Told } from '../../words/told.js';

/**
 * A drawing as plain data. Coordinates are millimetres of the panels themselves, x to the right and y DOWN the page;
 * floats are allowed here and nowhere before. Lettering and line widths are counted in millimetres of paper:
 * one millimetre of paper is `scale` millimetres of panel.
 */
export interface Scene {
  readonly view: 'panel' | 'all-panels';
  readonly carcass: string;
  /** Key of the panel; null where all panels of the carcass are drawn. */
  readonly panel: string | null;
  readonly title: Told;
  /** What else stands at the head of the drawing, each a word and its value: board, finished size, cut size. */
  readonly facts: readonly Fact[];
  /** Which face is seen and how it lies, in words. */
  readonly caption: Told | '';
  readonly reader: Reader;
  /** Denominator of the scale; for paper one of ISO 5455: 1, 2, 5, 10, 20, 50. */
  readonly scale: number;
  /** Holds every shape and text. */
  readonly frame: Box;
  /** In the order of painting. Keys are unique in the scene and stay the same while the thing drawn does. */
  readonly shapes: readonly Shape[];
  /** Heads of the hole table's columns, with the unit of each. */
  readonly heads: readonly Told[];
  readonly table: readonly HoleLine[];
  readonly findings: readonly SceneFinding[];
  /** Shelves that may be moved, on a screen. */
  readonly shelves: readonly SceneShelf[];
  /** One sentence each, under the drawing. */
  readonly notes: readonly Told[];
  /** Where the things drawn come from in the text. */
  readonly sources: Readonly<Record<SourceKey, Place>>;
}

/** What of a scene is printed; the rest is for a screen, where things can be pointed at. */
export type PrintedScene = Omit<Scene, 'carcass' | 'panel' | 'shelves' | 'sources'>;

/**
 * What a drawing is for. On paper it is true to a scale of ISO 5455; on a screen, which has no scale, it fills a pane with
 * lettering of one size.
 */
export type Medium = 'paper' | Screen;

/** A pane that a drawing is to fill. */
export interface Screen {
  readonly pane: Pane;
  /** Lettering and all that is measured in it so many times smaller, for a reader who has zoomed in; 1 for the whole. */
  readonly nearer: number;
}

/** Room for a drawing, in millimetres of lettering: whoever knows the pane's pixels knows how many of them one is to have. */
export interface Pane {
  readonly width: number;
  readonly height: number;
}

/** Half a window beside the text, for whoever does not know the pane. */
export const SCREEN: Screen = { pane: { width: 175, height: 138 }, nearer: 1 };

export interface Fact {
  readonly word: Told;
  readonly value: Told;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Names a place in `Scene.sources`. */
export type SourceKey = string;

/**
 * Line types of ISO 128-2: `outline` continuous wide (01.2), `thin` continuous narrow (01.1) for dimension and extension
 * lines, `hidden` dashed narrow (02.1), `centre` long-dashed dotted narrow (04.1), `band` long-dashed dotted wide (04.2, the
 * type for an edge that is treated), `phantom` long-dashed double-dotted narrow (05.1) for where a thing that moves has been or
 * may be, `fine` for what stands back behind the drawing.
 */
export type LineType = 'outline' | 'thin' | 'hidden' | 'centre' | 'band' | 'phantom' | 'fine';

/** What a shape stands for; renderers and tests tell shapes apart by it. */
export type ShapeClass =
  | 'panel'
  | 'end-view'
  | 'groove'
  | 'cut-off'
  | 'centre-line'
  | 'end-bore-run'
  | 'bore'
  | 'dimension'
  | 'datum'
  | 'band'
  | 'label'
  | 'number'
  | 'panel-name'
  | 'finding'
  | 'loose-shelf'
  | 'code'
  | MachineClass;

/** What stands on a machine's table. */
export type MachineClass =
  | 'table'
  | 'zone'
  | 'fence'
  | 'head'
  | 'stop-used'
  | 'stop-standing'
  | 'stop-lowered'
  | 'clamp'
  | 'hole-made'
  | 'hole-now'
  | 'hole-to-come'
  | 'spindle-loaded'
  | 'spindle-empty'
  | 'bit'
  | 'move'
  | 'break';

interface Common {
  readonly key: string;
  readonly class: ShapeClass;
  /** Key of the panel that it belongs to. */
  readonly panel: string;
  readonly source?: SourceKey;
}
export interface LineShape extends Common {
  readonly kind: 'line';
  readonly line: LineType;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}
export interface PathShape extends Common {
  readonly kind: 'path';
  readonly line: LineType;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly fill: 'none' | 'paper' | 'board' | 'ink';
}
export interface CircleShape extends Common {
  readonly kind: 'circle';
  readonly line: LineType;
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}
export interface Mouth {
  readonly u: Micrometres;
  readonly v: Micrometres;
  readonly t: Micrometres;
}
/** One bore, seen along its axis, or (`hidden`) bored from the face that lies down. */
export interface BoreShape extends Common {
  readonly kind: 'bore';
  readonly bore: string;
  /** Id of the joint or the row. */
  readonly group: string;
  readonly purpose: BorePurpose;
  readonly face: Surface;
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
  readonly hidden: boolean;
  /** Middle of its mouth in the frame of the panel, t from the outside face, in micrometres. */
  readonly mouth: Mouth;
  /** Number of its line in the hole table. */
  readonly number: number;
  /** All that is known of it, in words and figures. */
  readonly about: Told;
}
/** One line of lettering. `x`, `y` is its anchor on the base line before turning; `turn` in degrees, clockwise on the page. */
export interface TextShape extends Common {
  readonly kind: 'text';
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Height of the capitals, in millimetres of paper (ISO 3098: 2.5, 3.5, 5). */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turn: 0 | -90;
  readonly strong: boolean;
}
/** A ring about a bore that a finding concerns. */
export interface MarkShape extends Common {
  readonly kind: 'mark';
  readonly severity: Severity;
  /** Whether it carries a flag as well: one bore in a line does, for all that the same findings concern. */
  readonly flagged: boolean;
  readonly bore: string;
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}
/** A bracket along neighbours of a row that one finding concerns, with a flag. */
export interface BracketShape extends Common {
  readonly kind: 'bracket';
  readonly severity: Severity;
  readonly bores: readonly string[];
  /** End of an arm, spine from end to end, end of the other arm. */
  readonly points: readonly Point[];
  readonly flag: Point;
}
/** A two-dimensional code: dark squares in a field of `size` by `size`, the blank border about them left out. */
export interface CodeShape extends Common {
  readonly kind: 'code';
  readonly x: number;
  readonly y: number;
  readonly size: number;
  /** Row by row from the top; true is dark. */
  readonly dark: readonly (readonly boolean[])[];
}
export type Shape = LineShape | PathShape | CircleShape | BoreShape | TextShape | MarkShape | BracketShape | CodeShape;

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** One line of the hole table: bores of one joint or row that are alike. Figures are in the scene's reader, without it. */
export interface HoleLine {
  readonly number: number;
  readonly panel: string;
  readonly count: number;
  readonly face: Told;
  /** From the front edge. */
  readonly u: Told;
  /** From the reference end; on an end, from the outside face. */
  readonly v: Told;
  readonly diameter: Told;
  readonly depth: Told;
  readonly purpose: BorePurpose;
  /** The purpose and what it is for, in words: 'dowel to bottom', 'front row'. */
  readonly use: Told;
  readonly bores: readonly string[];
  readonly source: SourceKey;
}

export interface SceneFinding {
  readonly key: string;
  readonly rule: string;
  readonly severity: Severity;
  readonly message: Told;
  readonly panel: string | null;
  /** Bores concerned that are in this scene. */
  readonly bores: readonly string[];
  readonly source: SourceKey;
}

/** A loose shelf at a row of the panel that is drawn. */
export interface SceneShelf {
  /** Key of its shape. */
  readonly key: string;
  /** Key of its panel. */
  readonly panel: string;
  /** From one hole to the next one up the row, on the page. */
  readonly step: Point;
  /** The hole that its pins are in, counted from 1, and how many there are. */
  readonly hole: number;
  readonly holes: number;
  /** 'loose-1 on hole 10 of 23' */
  readonly about: Told;
}
