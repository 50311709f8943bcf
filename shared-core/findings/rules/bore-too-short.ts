import { housingId } from '../../boring/construction.js';
import { matings, type Mate } from '../../boring/matings.js';
import type { Bore } from '../../boring/model.js';
import type { CamFitting, ConnectorScrew } from '../../shop/model.js';
import type { Micrometres } from '../../length/units.js';
import { boresTold, depthOf, theBores } from '../bores.js';
import { ownText, remove } from '../changes.js';
import type { Severity } from '../finding.js';
import { grouped, panelOf } from '../lookups.js';
import type { CarcassContext, CarcassRule, Found } from '../rule.js';
import { show, verb } from '../words.js';

export const boreTooShort: CarcassRule = {
  name: 'bore-too-short',
  severity: 'error',
  about: {
    what: 'A bore is shorter than the screw, the bolt or the stud that goes into it, or the screw hardly reaches the end or not at all.',
    why: 'A screw that is driven past its pilot hole splits the end of the board. A bolt whose bore stops short of the cam cannot be caught by it, nor one that lies deeper in a thick board than the cam goes; and a stud that is not home holds the joint apart. How far a screw goes into the end is its length less the thickness that it passes; less than twice its width holds little (then this is a warning; common practice, no source).',
    remedy:
      'Leave the depth to the fitting, or bore deeper; where a screw or a cam is too short for the board, take a longer one.',
    example: 'kind: wall\nwidth: 600\njoint: screw-7x50\npanels:\n  bottom: { end-depth: 10 }',
  },
  check(context) {
    const short = matings(context.carcass, context.boring).flatMap(({ mates }) =>
      mates.flatMap((mate) => (mate.faults.length > 0 ? [] : shortBores(context, mate))),
    );
    return grouped(short, ({ bore, why }) => {
      const place = depthOf(context, bore)?.place ?? bore.place;
      return `${place.part} ${place.start} ${why}`;
    }).map((same) => found(context, same));
  },
};

interface Short {
  readonly bore: Bore;
  readonly why: string;
  readonly todo: string;
  readonly severity?: Severity;
}

/** How many times its width a screw must go into the end to hold (common practice, no source). */
const LEAST_HOLD = 2;

function shortBores(context: CarcassContext, { face, end }: Mate): readonly Short[] {
  const fitting = end.fitting === null ? undefined : context.shop.fittings.get(end.fitting);
  switch (fitting?.kind) {
    case 'screw':
      return shortPilot(context, fitting, face, end);
    case 'cam':
      return [
        ...shortBolt(context, fitting, end),
        ...shortCam(context, fitting, end),
        ...shortStud(context, fitting, face),
      ];
    default:
      return [];
  }
}

function shortPilot(context: CarcassContext, screw: ConnectorScrew, face: Bore, end: Bore): readonly Short[] {
  const passed = panelOf(context, face.panel)?.thickness ?? 0;
  const reach = screw.length - passed;
  const through = `${screw.name} is ${show(context, screw.length)} long and passes ${show(context, passed)} of board`;
  if (reach <= 0) return [{ bore: end, why: `${through}: it does not reach the end`, todo: 'Take a longer screw.' }];
  if (reach < LEAST_HOLD * screw.clearance) {
    const why = `${through}: it goes only ${show(context, reach)} into the end, less than ${LEAST_HOLD} times its width of ${show(context, screw.clearance)}, and holds little`;
    return [{ bore: end, why, todo: 'Take a longer screw.', severity: 'warning' }];
  }
  if (end.depth >= reach) return [];
  return [{ bore: end, why: `${through}, so it goes ${show(context, reach)} into the end`, todo: DEEPER }];
}

/** The bolt's bore must open into the cam's with its whole width: where its rim meets the round of the cam. */
function shortBolt(context: CarcassContext, cam: CamFitting, end: Bore): readonly Short[] {
  if (end.purpose !== 'cam-bolt') return [];
  const short: Micrometres = cam.distance - end.depth;
  if (short <= 0 || 4 * short ** 2 <= cam.camDiameter ** 2 - cam.boltDiameter ** 2) return [];
  return [
    { bore: end, why: `the cam of ${cam.name} stands ${show(context, cam.distance)} from the end`, todo: DEEPER },
  ];
}

/** The cam must reach past the whole of the bolt, which is at least as thick as its stud and lies in the middle of the board. */
function shortCam(context: CarcassContext, cam: CamFitting, end: Bore): readonly Short[] {
  const housing = context.boring.bores.find(({ id }) => id === housingId(end.id));
  const thickness = panelOf(context, end.panel)?.thickness;
  if (housing === undefined || thickness === undefined) return [];
  const under: Micrometres = housing.face === 'outside' ? end.v : thickness - end.v;
  if (2 * housing.depth >= 2 * under + cam.studDiameter) return [];
  return [
    {
      bore: housing,
      why: `the bolt of ${cam.name} lies ${show(context, under)} under the face of a board of ${show(context, thickness)}, where the cam does not catch it`,
      todo: 'Take a fitting that is made for this thickness, or a thinner board.',
    },
  ];
}

function shortStud(context: CarcassContext, cam: CamFitting, face: Bore): readonly Short[] {
  if (face.purpose !== 'cam-stud' || face.depth >= cam.studDepth) return [];
  return [{ bore: face, why: `the stud of ${cam.name} goes in ${show(context, cam.studDepth)}`, todo: DEEPER }];
}

const DEEPER = 'Bore deeper, or leave the depth to the fitting.';

function found(context: CarcassContext, same: readonly Short[]): Found {
  const { bore, why, todo, severity = 'error' } = same[0]!;
  const own = depthOf(context, bore);
  const bores = same.map((one) => one.bore);
  return {
    place: own?.place ?? bore.place,
    panel: bore.panel,
    severity,
    message:
      `${theBores(boresTold(bores))} ${verb(bores.length, 'is', 'are')} ` +
      `${show(context, bore.depth)} deep, and ${why}. ${todo}`,
    bores: bores.map(({ id }) => id),
    repairs:
      own !== undefined && ownText(own)
        ? [{ title: `Leave the depth in ${bore.panel} to the fitting`, changes: [remove(own.path)], preferred: true }]
        : [],
  };
}
