import type { FaceCutter, Print } from '../shared-core/service.js';

/** What of HarfBuzz’s subsetter is used (an open library of font tools, as its own C interface; places are in its memory). */
interface Subsetter {
  readonly memory: { readonly buffer: ArrayBuffer };
  readonly _initialize: () => void;
  readonly malloc: (bytes: number) => number;
  readonly hb_blob_create: (at: number, bytes: number, mode: number, own: number, free: number) => number;
  readonly hb_blob_get_data: (blob: number, bytes: number) => number;
  readonly hb_blob_get_length: (blob: number) => number;
  readonly hb_blob_destroy: (blob: number) => void;
  readonly hb_face_create: (blob: number, index: number) => number;
  readonly hb_face_reference_blob: (face: number) => number;
  readonly hb_face_destroy: (face: number) => void;
  readonly hb_set_add: (set: number, member: number) => void;
  readonly hb_subset_input_create_or_fail: () => number;
  readonly hb_subset_input_unicode_set: (input: number) => number;
  readonly hb_subset_input_set: (input: number, kind: number) => number;
  readonly hb_subset_input_set_flags: (input: number, flags: number) => void;
  readonly hb_subset_input_destroy: (input: number) => void;
  readonly hb_subset_or_fail: (face: number, input: number) => number;
}

// Values of HarfBuzz’s hb.h and hb-subset.h.
const WRITABLE = 2;
const NO_HINTING = 1;
const DROPPED_TABLES = 3;
/** Letters stand side by side as they were measured: no pairs that close up, no letters that grow together. */
const LAYOUT_TABLES = ['GSUB', 'GPOS', 'GDEF', 'kern'];

/**
 * Cuts faces down to the letters asked for. Letters that a face lacks are left out.
 * @param module the subsetter, compiled
 */
export function faceCutter(faces: Print['fonts'], module: WebAssembly.Module): FaceCutter {
  const made = new Map<string, string>();
  let start = (): ((letters: string, strong: boolean) => Uint8Array) => {
    const cut = started(faces, module);
    start = () => cut;
    return cut;
  };
  return (letters, strong) => {
    const key = `${strong ? 'bold' : 'regular'} ${letters}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const data = inBase64(start()(letters, strong));
    if (made.size >= MOST_KEPT) made.clear();
    made.set(key, data);
    return data;
  };
}

/** Many drawings of a job have the same letters. */
const MOST_KEPT = 200;

function started(faces: Print['fonts'], module: WebAssembly.Module): (letters: string, strong: boolean) => Uint8Array {
  const library = new WebAssembly.Instance(module, {}).exports as unknown as Subsetter;
  library._initialize();
  const [regular, bold] = [faceIn(library, faces.regular), faceIn(library, faces.bold)];
  return (letters, strong) => subset(library, strong ? bold : regular, letters);
}

function faceIn(library: Subsetter, file: Uint8Array): number {
  const at = library.malloc(file.length);
  new Uint8Array(library.memory.buffer).set(file, at);
  const blob = library.hb_blob_create(at, file.length, WRITABLE, 0, 0);
  const face = library.hb_face_create(blob, 0);
  library.hb_blob_destroy(blob);
  return face;
}

function subset(library: Subsetter, face: number, letters: string): Uint8Array {
  const input = library.hb_subset_input_create_or_fail();
  library.hb_subset_input_set_flags(input, NO_HINTING);
  const wanted = library.hb_subset_input_unicode_set(input);
  for (const letter of letters) library.hb_set_add(wanted, letter.codePointAt(0)!);
  const dropped = library.hb_subset_input_set(input, DROPPED_TABLES);
  for (const tag of LAYOUT_TABLES) library.hb_set_add(dropped, tagOf(tag));
  const cut = library.hb_subset_or_fail(face, input);
  library.hb_subset_input_destroy(input);
  if (cut === 0) throw new Error('the subsetter took no face');
  const blob = library.hb_face_reference_blob(cut);
  const from = library.hb_blob_get_data(blob, 0);
  // A copy: the memory is used again.
  const file = new Uint8Array(library.memory.buffer, from, library.hb_blob_get_length(blob)).slice();
  library.hb_blob_destroy(blob);
  library.hb_face_destroy(cut);
  return file;
}

const tagOf = (tag: string): number => Array.from(tag).reduce((sum, letter) => sum * 256 + letter.charCodeAt(0), 0);

/** In steps, as a call takes only so many arguments. */
function inBase64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(text);
}
