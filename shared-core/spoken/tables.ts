import type { MixedEnd, SideName } from '../words/names.js';
import type { FACE_COLUMN as faceColumnLabels } from '../drawing/messages.js';
import type {
  FACTS as factsLabels,
  TABLE as tableLabels,
  MEASURED as distancesLabels,
} from '../drawing/bore-map/messages.js';
import type {
  NAMES as onMachineLabels,
  SIGNS as signsLabels,
  PINS as pinsLabels,
} from '../drawing/machine-view/messages.js';
import type { FACTS as machineFactsLabels, NAMES as machineNamesLabels } from '../drawing/shop-view/messages.js';
import type { TEXTS as cautionsLabels } from '../machining/caution.js';
import type { KIND_WORDS as machineKindsLabels } from '../shop/kind-words.js';
import type {
  HEADS as setUpHeadsLabels,
  CHECK_HEADS as checkHeadsLabels,
  SETTINGS as settingsLabels,
  SETTING_VALUES as settingValuesLabels,
  MEASURED as measuredLabels,
  AGAINST as againstLabels,
  COUNTED_FROM as countedFromLabels,
  CHANGED as changedLabels,
  TURNS as turnsLabels,
} from '../papers/set-up/messages.js';
import type { say as size } from '../carcass/messages.js';
import type { say as text } from '../document/messages.js';
import type { say as boxView } from '../drawing/box-view/messages.js';
import type { say as boreMap } from '../drawing/bore-map/messages.js';
import type { say as machineView } from '../drawing/machine-view/messages.js';
import type { say as drawing } from '../drawing/messages.js';
import type { say as shopView } from '../drawing/shop-view/messages.js';
import type { say as like } from '../engine/like-findings.js';
import type { jobMessages as job } from '../engine/messages.js';
import type { say as refactors } from '../engine/refactors.js';
import type { sayOverlap, sayPast, sayUneven } from '../engine/along-walls.js';
import type { say as setUpForOne } from '../engine/set-ups-for-one.js';
import type { say as moves } from '../engine/moves/messages.js';
import type { say as toDefaults } from '../engine/to-defaults.js';
import type { causeMessages as causes } from '../findings/causes.js';
import type { rowReachMessages as rowReach } from '../findings/row-reach.js';
import type { say as bandMissing } from '../findings/rules/band-missing.js';
import type { say as bandTooNarrow } from '../findings/rules/band-too-narrow.js';
import type { say as bitMissing } from '../findings/rules/bit-missing.js';
import type { say as boreInGroove } from '../findings/rules/bore-in-groove.js';
import type { say as boreTooShort } from '../findings/rules/bore-too-short.js';
import type { say as boreWithoutMate } from '../findings/rules/bore-without-mate.js';
import type { say as boresCollide } from '../findings/rules/bores-collide.js';
import type { say as boringDepthOutOfRange } from '../findings/rules/boring-depth-out-of-range.js';
import type { say as breakThrough } from '../findings/rules/break-through.js';
import type { say as cannotBeBored } from '../findings/rules/cannot-be-bored.js';
import type { say as clampMissesPanel } from '../findings/rules/clamp-misses-panel.js';
import type { say as clampTooSmall } from '../findings/rules/clamp-too-small.js';
import type { say as dowelDepths } from '../findings/rules/dowel-depths.js';
import type { say as jointCrowded } from '../findings/rules/joint-crowded.js';
import type { say as dowelPlaceUnused } from '../findings/rules/dowel-place-unused.js';
import type { say as dowelsUnmatched } from '../findings/rules/dowels-unmatched.js';
import type { say as doorSwingMeets } from '../findings/rules/door-swing-meets.js';
import type { say as drawerLowerThanSlide } from '../findings/rules/drawer-lower-than-slide.js';
import type { say as drawerMeetsShelf } from '../findings/rules/drawer-meets-shelf.js';
import type { say as applianceWithoutAir } from '../findings/rules/appliance-without-air.js';
import type { say as applianceWithoutRoom } from '../findings/rules/appliance-without-room.js';
import type { say as hingeNotForSlant } from '../findings/rules/hinge-not-for-slant.js';
import type { say as notInDiagonal } from '../findings/rules/not-in-diagonal.js';
import type { say as doorHungOnBlind } from '../findings/rules/door-hung-on-blind.js';
import type { say as pullMeetsCorner } from '../findings/rules/pull-meets-corner.js';
import type { say as frontOffPitch } from '../findings/rules/front-off-pitch.js';
import type { say as frontsLeaveOpen } from '../findings/rules/fronts-leave-open.js';
import type { say as slideBesideRow } from '../findings/rules/slide-beside-row.js';
import type { say as doorTooHeavy } from '../findings/rules/door-too-heavy.js';
import type { say as hangsTooHeavy } from '../findings/rules/hangs-too-heavy.js';
import type { say as shelfSags } from '../findings/rules/shelf-sags.js';
import type { say as tipsWhenOpen } from '../findings/rules/tips-when-open.js';
import type { say as loads } from '../loads/messages.js';
import type { say as hingeFarOff } from '../findings/rules/hinge-far-off.js';
import type { say as hingeOutOfReach } from '../findings/rules/hinge-out-of-reach.js';
import type { say as hingeWithoutRoom } from '../findings/rules/hinge-without-room.js';
import type { say as indexUnbalanced } from '../findings/rules/index-unbalanced.js';
import type { say as jointNotHeld } from '../findings/rules/joint-not-held.js';
import type { say as jointOffLoad } from '../findings/rules/joint-off-load.js';
import type { say as looseShelfWithoutRow } from '../findings/rules/loose-shelf-without-row.js';
import type { say as misfitPastLimit } from '../findings/rules/misfit-past-limit.js';
import type { say as nearEdge } from '../findings/rules/near-edge.js';
import type { say as panelOutOfRange } from '../findings/rules/panel-out-of-range.js';
import type { say as panelPastSheet } from '../findings/rules/panel-past-sheet.js';
import type { planReplayMessages as planReplayDiffers } from '../findings/rules/plan-replay-differs.js';
import type { say as rowDistance } from '../findings/rules/row-distance.js';
import type { say as rowPastReach } from '../findings/rules/row-past-reach.js';
import type { say as rowUnbalanced } from '../findings/rules/row-unbalanced.js';
import type { say as rowsNotOpposite } from '../findings/rules/rows-not-opposite.js';
import type { say as screwsHidden } from '../findings/rules/screws-hidden.js';
import type { say as shelfOffGrid } from '../findings/rules/shelf-off-grid.js';
import type { say as shelfPastStop } from '../findings/rules/shelf-past-stop.js';
import type { say as shelfShutIn } from '../findings/rules/shelf-shut-in.js';
import type { say as shelfTips } from '../findings/rules/shelf-tips.js';
import type { pullPlaceMessages as pullPlaces } from '../findings/pull-places.js';
import type { say as pullOffFront } from '../findings/rules/pull-off-front.js';
import type { say as pullScrewMeets } from '../findings/rules/pull-screw-meets.js';
import type { say as partialRowsCost } from '../findings/rules/partial-rows-cost.js';
import type { bracketChoices } from '../findings/bracket-choices.js';
import type { say as bracketWithoutRoom } from '../findings/rules/bracket-without-room.js';
import type { say as wardrobeRailWithoutRoom } from '../findings/rules/wardrobe-rail-without-room.js';
import type { say as clothesWithoutDepth } from '../findings/rules/clothes-without-depth.js';
import type { footChoices } from '../findings/foot-choices.js';
import type { say as frontNotHeld } from '../findings/rules/front-not-held.js';
import type { say as feetOverloaded } from '../findings/rules/feet-overloaded.js';
import type { say as footOutOfRange } from '../findings/rules/foot-out-of-range.js';
import type { say as footWithoutRoom } from '../findings/rules/foot-without-room.js';
import type { say as besideTooNear } from '../findings/rules/beside-too-near.js';
import type { valueUnusedMessages as valueUnused } from '../findings/rules/value-unused.js';
import type { say as cam } from '../fittings/kinds/cam.js';
import type { say as dowel } from '../fittings/kinds/dowel.js';
import type { say as screw } from '../fittings/kinds/screw.js';
import type { say as nothingYet } from '../job/empty.js';
import type { leftOutMessages as leftOut } from '../job/left-out.js';
import type { say as reach } from '../job/reach.js';
import type { say as jobText } from '../job/messages.js';
import type { say as noSetUp } from '../machining/plan/messages.js';
import type { say as replay } from '../machining/replay/messages.js';
import type { HEADS as assemblyHeads, say as assembly } from '../papers/assembly/messages.js';
import type { HEADS as bandingHeads, say as bandingList } from '../papers/banding-list/messages.js';
import type { say as boreMaps, WORDS as boreMapWords } from '../papers/bore-maps/messages.js';
import type {
  HEADS as checkingHeads,
  MEASURES as checkingMeasures,
  say as checking,
} from '../papers/checking/messages.js';
import type {
  HEADS as costHeads,
  NO_PRICE as noPrice,
  PARTS as costParts,
  say as cost,
  WORK as costWork,
} from '../papers/cost/messages.js';
import type { EDGES as cutEdges, HEADS as cutHeads, say as cutList } from '../papers/cut-list/messages.js';
import type {
  HEADS as hardwareHeads,
  say as hardwareList,
  THINGS as hardwareThings,
} from '../papers/hardware-list/messages.js';
import type { HEADS as jointHeads, say as joints } from '../papers/joints/messages.js';
import type {
  HEADS as labelHeads,
  MARKS as labelMarks,
  OPERATIONS as labelOperations,
  say as panelLabels,
} from '../papers/panel-labels/messages.js';
import type { say as panelList } from '../papers/panel-list/messages.js';
import type { HEADS as printHeads, say as print } from '../papers/render/messages.js';
import type { say as setUp } from '../papers/set-up/messages.js';
import type {
  HEADS as layoutHeads,
  PARTS as layoutParts,
  say as sheetLayouts,
} from '../papers/sheet-layouts/messages.js';
import type { told as fileUnit } from '../schema/file-unit.js';
import type { say as reading } from '../schema/messages.js';
import type { say as wordReplaced } from '../schema/reading/formerly.js';
import type {
  form,
  HEADS as hoverHeadsLabels,
  hint,
  hover,
  line as shopLine,
  offer,
  say as file,
  UNNAMED as unnamedLabels,
} from '../service/messages.js';
import type { TITLES as paperTitles } from '../service/papers.js';
import type { say as sharedLoad } from '../service/shared-load.js';
import type { say as shopEmpty } from '../shop/empty.js';
import type { say as labelSheet } from '../shop/label-sheet.js';
import type { say as shop } from '../shop/messages.js';
import type { say as valueUnusedInShop } from '../shop/unused.js';
import type { say as tolerance } from '../tolerance/messages.js';
import type { TranslationOf } from '../words/message.js';

/** Every table of messages of the core, by the name of its group. */
export interface Tables {
  readonly assembly: typeof assembly;
  readonly 'band-missing': typeof bandMissing;
  readonly 'band-too-narrow': typeof bandTooNarrow;
  readonly 'banding-list': typeof bandingList;
  readonly 'bit-missing': typeof bitMissing;
  readonly 'bore-in-groove': typeof boreInGroove;
  readonly 'bore-map': typeof boreMap;
  readonly 'bore-maps': typeof boreMaps;
  readonly 'bore-too-short': typeof boreTooShort;
  readonly 'bore-without-mate': typeof boreWithoutMate;
  readonly 'bores-collide': typeof boresCollide;
  readonly 'boring-depth-out-of-range': typeof boringDepthOutOfRange;
  readonly 'box-view': typeof boxView;
  readonly 'break-through': typeof breakThrough;
  readonly cam: typeof cam;
  readonly 'cannot-be-bored': typeof cannotBeBored;
  readonly causes: typeof causes;
  readonly checking: typeof checking;
  readonly 'clamp-misses-panel': typeof clampMissesPanel;
  readonly 'clamp-too-small': typeof clampTooSmall;
  readonly cost: typeof cost;
  readonly 'cut-list': typeof cutList;
  readonly dowel: typeof dowel;
  readonly 'dowel-depths': typeof dowelDepths;
  readonly 'dowel-place-unused': typeof dowelPlaceUnused;
  readonly 'joint-crowded': typeof jointCrowded;
  readonly 'dowels-unmatched': typeof dowelsUnmatched;
  readonly drawing: typeof drawing;
  readonly file: typeof file;
  readonly 'file-unit': typeof fileUnit;
  readonly form: typeof form;
  readonly 'hardware-list': typeof hardwareList;
  readonly 'door-too-heavy': typeof doorTooHeavy;
  readonly 'hangs-too-heavy': typeof hangsTooHeavy;
  readonly 'shelf-sags': typeof shelfSags;
  readonly 'tips-when-open': typeof tipsWhenOpen;
  readonly loads: typeof loads;
  readonly 'hinge-far-off': typeof hingeFarOff;
  readonly 'hinge-out-of-reach': typeof hingeOutOfReach;
  readonly 'door-swing-meets': typeof doorSwingMeets;
  readonly 'drawer-lower-than-slide': typeof drawerLowerThanSlide;
  readonly 'drawer-meets-shelf': typeof drawerMeetsShelf;
  readonly 'appliance-without-air': typeof applianceWithoutAir;
  readonly 'appliance-without-room': typeof applianceWithoutRoom;
  readonly 'hinge-not-for-slant': typeof hingeNotForSlant;
  readonly 'not-in-diagonal': typeof notInDiagonal;
  readonly 'door-hung-on-blind': typeof doorHungOnBlind;
  readonly 'pull-meets-corner': typeof pullMeetsCorner;
  readonly 'front-off-pitch': typeof frontOffPitch;
  readonly 'fronts-leave-open': typeof frontsLeaveOpen;
  readonly 'slide-beside-row': typeof slideBesideRow;
  readonly 'hinge-without-room': typeof hingeWithoutRoom;
  readonly hint: typeof hint;
  readonly hover: typeof hover;
  readonly 'index-unbalanced': typeof indexUnbalanced;
  readonly job: typeof job;
  readonly 'job-text': typeof jobText;
  readonly 'joint-not-held': typeof jointNotHeld;
  readonly 'joint-off-load': typeof jointOffLoad;
  readonly joints: typeof joints;
  readonly 'label-sheet': typeof labelSheet;
  readonly 'left-out': typeof leftOut;
  readonly 'loose-shelf-without-row': typeof looseShelfWithoutRow;
  readonly 'machine-view': typeof machineView;
  readonly 'misfit-past-limit': typeof misfitPastLimit;
  readonly 'near-edge': typeof nearEdge;
  readonly 'no-set-up': typeof noSetUp;
  readonly 'nothing-yet': typeof nothingYet;
  readonly offer: typeof offer;
  readonly 'panel-labels': typeof panelLabels;
  readonly 'panel-list': typeof panelList;
  readonly 'panel-out-of-range': typeof panelOutOfRange;
  readonly 'panel-past-sheet': typeof panelPastSheet;
  readonly 'plan-replay-differs': typeof planReplayDiffers;
  readonly print: typeof print;
  readonly reach: typeof reach;
  readonly reading: typeof reading;
  readonly like: typeof like;
  readonly moves: typeof moves;
  readonly refactors: typeof refactors;
  readonly replay: typeof replay;
  readonly 'row-distance': typeof rowDistance;
  readonly 'row-past-reach': typeof rowPastReach;
  readonly 'row-reach': typeof rowReach;
  readonly 'row-unbalanced': typeof rowUnbalanced;
  readonly 'rows-not-opposite': typeof rowsNotOpposite;
  readonly screw: typeof screw;
  readonly 'screws-hidden': typeof screwsHidden;
  readonly 'set-up': typeof setUp;
  readonly 'set-up-for-one': typeof setUpForOne;
  readonly 'carcasses-overlap': typeof sayOverlap;
  readonly 'past-wall-end': typeof sayPast;
  readonly 'worktop-uneven': typeof sayUneven;
  readonly 'shared-load': typeof sharedLoad;
  readonly 'sheet-layouts': typeof sheetLayouts;
  readonly 'shelf-off-grid': typeof shelfOffGrid;
  readonly 'shelf-past-stop': typeof shelfPastStop;
  readonly 'shelf-shut-in': typeof shelfShutIn;
  readonly 'shelf-tips': typeof shelfTips;
  readonly shop: typeof shop;
  readonly 'shop-empty': typeof shopEmpty;
  readonly 'shop-line': typeof shopLine;
  readonly 'shop-view': typeof shopView;
  readonly size: typeof size;
  readonly text: typeof text;
  readonly 'to-defaults': typeof toDefaults;
  readonly tolerance: typeof tolerance;
  readonly 'pull-places': typeof pullPlaces;
  readonly 'pull-off-front': typeof pullOffFront;
  readonly 'pull-screw-meets': typeof pullScrewMeets;
  readonly 'partial-rows-cost': typeof partialRowsCost;
  readonly 'bracket-choices': typeof bracketChoices;
  readonly 'bracket-without-room': typeof bracketWithoutRoom;
  readonly 'wardrobe-rail-without-room': typeof wardrobeRailWithoutRoom;
  readonly 'clothes-without-depth': typeof clothesWithoutDepth;
  readonly 'foot-choices': typeof footChoices;
  readonly 'front-not-held': typeof frontNotHeld;
  readonly 'feet-overloaded': typeof feetOverloaded;
  readonly 'foot-out-of-range': typeof footOutOfRange;
  readonly 'foot-without-room': typeof footWithoutRoom;
  readonly 'beside-too-near': typeof besideTooNear;
  readonly 'value-unused': typeof valueUnused;
  readonly 'value-unused-in-shop': typeof valueUnusedInShop;
  readonly 'word-replaced': typeof wordReplaced;
}

/** Tables of messages in another language. */
export type Translations = { readonly [G in keyof Tables]?: TranslationOf<Tables[G]> };

/** Labels of papers that are told in the language of the program. */
interface PaperLabelTables {
  readonly 'paper-titles': typeof paperTitles;
  readonly 'assembly-heads': typeof assemblyHeads;
  readonly 'banding-heads': typeof bandingHeads;
  readonly 'bore-map-words': typeof boreMapWords;
  readonly 'checking-heads': typeof checkingHeads;
  readonly 'checking-measures': typeof checkingMeasures;
  readonly 'cost-heads': typeof costHeads;
  readonly 'cost-parts': typeof costParts;
  readonly 'cost-work': typeof costWork;
  readonly 'no-price': typeof noPrice;
  readonly 'cut-heads': typeof cutHeads;
  readonly 'cut-edges': typeof cutEdges;
  readonly 'hardware-heads': typeof hardwareHeads;
  readonly 'hardware-things': typeof hardwareThings;
  readonly 'joint-heads': typeof jointHeads;
  readonly 'label-heads': typeof labelHeads;
  readonly 'label-marks': typeof labelMarks;
  readonly 'label-operations': typeof labelOperations;
  readonly 'layout-heads': typeof layoutHeads;
  readonly 'layout-parts': typeof layoutParts;
  readonly 'print-heads': typeof printHeads;
}
export type PaperLabels = {
  readonly [G in keyof PaperLabelTables]: { readonly [K in keyof PaperLabelTables[G]]: string };
};

/** Every table of labels of the core that is told in the language of the program, and words that figures of messages have. */
interface LabelTables {
  readonly 'face-column': typeof faceColumnLabels;
  readonly facts: typeof factsLabels;
  readonly table: typeof tableLabels;
  readonly distances: typeof distancesLabels;
  readonly 'on-machine': typeof onMachineLabels;
  readonly signs: typeof signsLabels;
  readonly pins: typeof pinsLabels;
  readonly 'machine-facts': typeof machineFactsLabels;
  readonly 'machine-names': typeof machineNamesLabels;
  readonly cautions: typeof cautionsLabels;
  readonly 'machine-kinds': typeof machineKindsLabels;
  readonly 'set-up-heads': typeof setUpHeadsLabels;
  readonly 'check-heads': typeof checkHeadsLabels;
  readonly settings: typeof settingsLabels;
  readonly 'setting-values': typeof settingValuesLabels;
  readonly measured: typeof measuredLabels;
  readonly against: typeof againstLabels;
  readonly 'counted-from': typeof countedFromLabels;
  readonly changed: typeof changedLabels;
  readonly turns: typeof turnsLabels;
  readonly 'hover-heads': typeof hoverHeadsLabels;
  readonly unnamed: typeof unnamedLabels;
  readonly sides: Readonly<Record<SideName | MixedEnd | 'fence' | 'head', string>>;
  readonly uses: Readonly<Record<string, string>>;
  readonly explained: Readonly<Record<string, string>>;
}

/** The same in another language: of the same names. */
export type LabelTranslations = {
  readonly [G in keyof LabelTables]: { readonly [K in keyof LabelTables[G]]: string };
};
