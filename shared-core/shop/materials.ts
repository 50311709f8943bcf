import type { Finding } from '../document/finding.js';
import { half, type Unit } from '../length/units.js';
import { showLength } from '../length/show.js';
import { errorAt } from '../schema/tell.js';
import type { Band, Board, Fitting } from './model.js';
import type { Names } from './names.js';
import type { ShopInput } from './schema.js';

type Input = ShopInput['value'];

/** The boards of a shop file by name; a name that is taken is told, and the first one counts. */
export function boardsOf(input: Input, names: Names): ReadonlyMap<string, Board> {
  const boards = new Map<string, Board>();
  for (const entry of input.boards?.value ?? []) {
    const board = entry.value.value;
    names.add(
      boards,
      entry,
      {
        name: entry.name.value,
        place: names.place(entry),
        thickness: (board.measured ?? board.thickness).value,
        nominal: board.thickness.value,
        sheetLength: board['sheet-length']?.value ?? null,
        sheetWidth: board['sheet-width']?.value ?? null,
        grain: board.grain?.value ?? 'none',
      },
      'board',
    );
  }
  return boards;
}

/** The bands of a shop file by name, likewise. */
export function bandsOf(input: Input, names: Names): ReadonlyMap<string, Band> {
  const bands = new Map<string, Band>();
  for (const entry of input.bands?.value ?? []) {
    const { thickness, height } = entry.value.value;
    const band = {
      name: entry.name.value,
      place: names.place(entry),
      thickness: thickness.value,
      height: height?.value ?? null,
    };
    names.add(bands, entry, band, 'band');
  }
  return bands;
}

/** Dowels, screws and cams of a shop file by name, likewise. */
export function fittingsOf(input: Input, names: Names): ReadonlyMap<string, Fitting> {
  const fittings = new Map<string, Fitting>();
  for (const entry of input.dowels?.value ?? []) {
    const dowel = entry.value.value;
    names.add(
      fittings,
      entry,
      {
        kind: 'dowel',
        name: entry.name.value,
        place: names.place(entry),
        diameter: dowel.diameter.value,
        length: dowel.length.value,
        // One that leaves nothing for the end is told; half and half then stands in for it.
        inFace: leavesEnd(dowel) ? dowel['in-face'].value : half(dowel.length.value),
      },
      'fitting',
    );
  }
  for (const entry of input.screws?.value ?? []) {
    const screw = entry.value.value;
    names.add(
      fittings,
      entry,
      {
        kind: 'screw',
        name: entry.name.value,
        place: names.place(entry),
        clearance: screw.clearance.value,
        pilot: screw.pilot.value,
        length: screw.length.value,
      },
      'fitting',
    );
  }
  for (const entry of input.cams?.value ?? []) {
    const cam = entry.value.value;
    names.add(
      fittings,
      entry,
      {
        kind: 'cam',
        name: entry.name.value,
        place: names.place(entry),
        camDiameter: cam['cam-diameter'].value,
        camDepth: cam['cam-depth'].value,
        distance: cam.distance.value,
        boltDiameter: cam['bolt-diameter'].value,
        studDiameter: cam['stud-diameter'].value,
        studDepth: cam['stud-depth'].value,
        guide: cam.guide?.value ?? null,
      },
      'fitting',
    );
  }
  return fittings;
}

type DowelInput = NonNullable<Input['dowels']>['value'][number]['value']['value'];

function leavesEnd(dowel: DowelInput): boolean {
  return dowel['in-face'].value < dowel.length.value;
}

/** A dowel must be longer than its bore in the face is deep, or nothing of it stands in the end. */
export function checkDowels(input: Input, unit: Unit, findings: Finding[]): void {
  for (const { value } of input.dowels?.value ?? []) {
    if (leavesEnd(value.value)) continue;
    const { 'in-face': inFace, length } = value.value;
    const [deep, long] = [inFace, length].map((one) => showLength(one.value, unit));
    const message = `The bore in the face is ${deep} deep and the dowel ${long} long: nothing of it is left for the end. Write a smaller \`in-face\`.`;
    findings.push(errorAt('value-wrong', inFace.place, message));
  }
}
