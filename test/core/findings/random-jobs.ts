import fc from 'fast-check';

/** Lines of one carcass that is faulty in ways that owners are: by a wrong figure, a leftover choice, a misspelt name. */
const mm = (least: number, most: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.integer({ min: least, max: most }).map(String),
    fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => String(tenths / 10)),
  );
const inches = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .integer({ min: Math.ceil((least / 25.4) * 16), max: Math.floor((most / 25.4) * 16) })
    .map((sixteenths) => `${sixteenths}/16`);

const list = (item: fc.Arbitrary<string>, most: number): fc.Arbitrary<string> =>
  fc.array(item, { minLength: 1, maxLength: most }).map((items) => `[${items.join(', ')}]`);

const blockList = (item: fc.Arbitrary<string>, most: number): fc.Arbitrary<string> =>
  fc.array(item, { minLength: 1, maxLength: most }).map((items) => items.map((one) => `\n  - ${one}`).join(''));

type Lengths = (least: number, most: number) => fc.Arbitrary<string>;

function panelLines(length: Lengths): fc.Arbitrary<string> {
  const choice = fc.oneof(
    list(length(20, 500), 3).map((places) => `dowels: ${places}`),
    fc.constantFrom('dowel-8x30', 'dowel-8x35', 'dowel-10x40', 'cam-15', 'screw-7x50').map((name) => `joint: ${name}`),
    length(5, 20).map((depth) => `face-depth: ${depth}`),
    length(10, 60).map((depth) => `end-depth: ${depth}`),
    fc.constantFrom('none', 'front', 'both').map((rows) => `rows: ${rows}`),
    length(4, 60).map((offset) => `row-offset: ${offset}`),
    fc.constantFrom('none', 'bnad-1').map((band) => `bands: { front: ${band} }`),
  );
  const panel = fc.constantFrom('left', 'right', 'bottom', 'shelf-1', 'botom');
  return fc
    .uniqueArray(fc.tuple(panel, choice), { minLength: 1, maxLength: 3, selector: ([key]) => key })
    .map(
      (entries) =>
        `panels: # what differs\n${entries.map(([key, what]) => `  ${key}: { ${what} } # on ${key}`).join('\n')}`,
    );
}

/** Doors, or fronts, with pulls of the shop and others. */
function frontLines(length: Lengths): fc.Arbitrary<string> {
  const pulls = fc.oneof(
    fc.constantFrom('bar-160', 'knob', 'bar-106', 'none').map((name) => `pulls: ${name}`),
    fc
      .tuple(fc.constantFrom('from-edge', 'from-end'), length(5, 120), fc.constantFrom('upright', 'level'))
      .map(([key, at, lies]) => `pulls: { pull: bar-160, ${key}: ${at}, lies: ${lies} }`),
    fc.constantFrom('top', 'bottom', 'middle').map((end) => `pulls: { pull: knob, end: ${end} }`),
  );
  const fronts = fc.constantFrom('doors: left', 'doors: pair', 'doors: { hung: right, how: inset }', 'fronts: [fixed]');
  return fc.tuple(fronts, pulls).map((lines) => lines.join('\n'));
}

function carcassLines(length: Lengths): fc.Arbitrary<string> {
  const maybe = (line: fc.Arbitrary<string>, often = 3): fc.Arbitrary<string> =>
    fc.oneof({ weight: often, arbitrary: fc.constant('') }, { weight: 1, arbitrary: line });
  const shelves = (key: string): fc.Arbitrary<string> =>
    fc.oneof(
      fc.integer({ min: 1, max: 3 }).map((count) => `${key}: ${count}`),
      list(length(60, 650), 3).map((at) => `${key}: ${at} # from the plan`),
      blockList(length(60, 650), 2).map((at) => `${key}:${at}`),
      blockList(
        length(60, 650).map((at) => `{ at: ${at} }`),
        2,
      ).map((at) => `${key}:${at}`),
    );
  return fc
    .tuple(
      fc.constantFrom('base', 'wall', 'tall', 'for-drawers', 'open').map((kind) => `kind: ${kind}`),
      length(300, 1600).map((width) => `width: ${width} # over all`),
      maybe(length(400, 2200).map((height) => `height: ${height}`)),
      maybe(length(200, 900).map((depth) => `depth: ${depth}`)),
      maybe(fc.constantFrom('board-16', 'board-19', 'bord-18').map((board) => `board: ${board}`)),
      maybe(
        fc.constantFrom('none', 'band-2', 'bnad-1').map((band) => `band: ${band}`),
        5,
      ),
      maybe(
        fc
          .constantFrom('dowel-8x35', 'dowel-10x40', 'cam-15', 'screw-7x50', 'dowl-8x30')
          .map((joint) => `joint: ${joint}`),
      ),
      maybe(length(4, 60).map((offset) => `row-offset: ${offset} # hole 1`)),
      maybe(
        length(10, 120).map((setback) => `row-setback: ${setback}`),
        5,
      ),
      maybe(length(80, 900).map((rear) => `rear-row: ${rear} # second row`)),
      maybe(
        list(length(20, 500), 4).map((places) => `dowels: ${places}`),
        5,
      ),
      maybe(
        fc.constantFrom('none', 'front', 'both').map((rows) => `rows: ${rows}`),
        4,
      ),
      maybe(
        fc.integer({ min: 1, max: 2 }).map((count) => `dividers: ${count}`),
        4,
      ),
      maybe(shelves('fixed-shelves'), 2),
      maybe(shelves('loose-shelves'), 1),
      maybe(frontLines(length), 3),
      maybe(fc.constantFrom('machines: { rows: row-dril }', 'machines: { clamp: face-head }'), 8),
      maybe(panelLines(length), 2),
    )
    .map((lines) => lines.filter((line) => line !== '').join('\n'));
}

/** A job of one to three such carcasses, in either unit, with the built-in shop. */
export const faultyJob: fc.Arbitrary<string> = fc
  .constantFrom('mm', 'in')
  .chain((unit) =>
    fc
      .array(carcassLines(unit === 'mm' ? mm : inches), { minLength: 1, maxLength: 3 })
      .map(
        (carcasses) =>
          `# ${unit}\nunit: ${unit}\ncarcasses:\n${carcasses.map((lines, i) => `  box-${i + 1}: # number ${i + 1}\n    ${lines.replaceAll('\n', '\n    ')}`).join('\n\n')}\n`,
      ),
  );
