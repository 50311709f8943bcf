import { quoted } from '../shared-core/words/english.js';
import { messages } from '../shared-core/words/message.js';

/** Why a file could not be read. Of what has no word here, the operating system's own words. */
export type FileFault =
  | 'missing'
  | 'forbidden'
  | 'folder'
  | 'not-a-file'
  | 'too-large'
  | 'name-too-long'
  | 'link-loop'
  | 'outside'
  | 'disk-full'
  | 'no-disk'
  | { readonly words: string };

/** What the server itself has to tell. */
export const say = messages('server', {
  notSaved: ({ reference }: { readonly reference: string }) =>
    `The shop file ${quoted(reference)} stands beside the job, and the job is not saved yet. Save the job; until then the built-in shop is used.`,
  noShopFile: ({ reference }: { readonly reference: string }) =>
    `${quoted(reference)} is not a shop file. Write the name of a file beside this one that ends in .shop.yaml.`,
  unreadable: ({ reference, fault }: { readonly reference: string; readonly fault: FileFault }) =>
    `The shop file ${quoted(reference)} cannot be read: ${because(fault)}. The built-in shop is used in its place.`,
  createShop: ({ reference }: { readonly reference: string }) => `Create ${reference} from the built-in shop`,
  checkingFiles: () => 'Checking job and shop files',
  stopped: ({ seconds }: { readonly seconds: number }) =>
    `Checking this file took longer than ${seconds} s and was stopped, so nothing in it is checked. Undo the last change; the file is tried again at the next one.`,
  takeRepairs: () => 'Take every repair that needs no choice',
  writePapers: () => 'Write shop papers',
  inReference: () => 'More in the reference',
  openShop: () => 'Open the shop file',

  // An older plan.
  textBroken: () => 'The text cannot be worked out as it stands; this is the last good plan.',
  carcassBroken: ({ name }: { readonly name: string }) =>
    `The text of ${quoted(name)} cannot be worked out as it stands; this is the last good plan.`,

  // Names that cannot be changed.
  fixedName: ({ name }: { readonly name: string }) =>
    `${quoted(name)} says which panel is meant, so it cannot have another name.`,
  renameFile: ({ name }: { readonly name: string }) =>
    `Rename the file ${quoted(name)} itself; the jobs that name it follow.`,
  describedElsewhere: ({ name }: { readonly name: string }) =>
    `${quoted(name)} is not described in a file that can be changed.`,
  notDescribed: ({ of, name }: { readonly of: string; readonly name: string }) => `No ${of} is called ${quoted(name)}.`,
  nameEmpty: ({ of }: { readonly of: string }) => `A ${of.replaceAll('-', ' ')} needs a name.`,
  nameOfLines: () => 'A name stands on one line.',
  nameNone: () => '‘none’ means nothing at all, so it cannot be a name.',
  nameTaken: ({ of, name }: { readonly of: string; readonly name: string }) =>
    `There is a ${of} called ${quoted(name)} already.`,

  // Codes of panel labels.
  noCode: () =>
    'This is not the code of a panel label. Scan the square code of a label, or paste its text: FILE#CARCASS/PANEL.',
  noCodedJob: ({ file, near }: { readonly file: string; readonly near: string | null }) =>
    near === null
      ? `No job file ${quoted(file)} is open or in the folders of this workspace. Open the folder that has it.`
      : `No job file ${quoted(file)} is open or in the folders of this workspace; there is ${quoted(near)}. Open the folder that has it.`,
  noCodedPanel: ({
    file,
    carcass,
    panel,
  }: {
    readonly file: string;
    readonly carcass: string;
    readonly panel: string;
  }) =>
    `${quoted(file)} has no panel ${quoted(panel)} in a carcass ${quoted(carcass)} any more. The label is of an earlier text of the job.`,

  notInitialized: () => 'The session has not begun. Send `initialize` first.',
  initializedTwice: () => 'The session has begun already. Send `initialize` once, or start another server.',
  shutDown: () => 'The session has ended. Send `exit`, and start another server.',
  paramsMissing: ({ method }: { readonly method: string }) =>
    `The request \`${method}\` has no parameters. Send them as an object.`,
  startedAnew: () => 'The server was started again, because one file kept it from answering.',
});

/** A fault of the file system in plain words, to stand after a colon. */
export function because(fault: FileFault): string {
  if (typeof fault !== 'string') return fault.words;
  return {
    missing: 'there is no such file',
    forbidden: 'it may not be read',
    folder: 'it is a folder',
    'not-a-file': 'it is not a file',
    'too-large': 'it is larger than 20 MB',
    'name-too-long': 'its name is too long',
    outside: 'it lies outside the folder, and this window is restricted; trust the folder to have it read',
    'link-loop': 'it is a link that leads back to itself',
    'disk-full': 'the disk is full',
    'no-disk': 'there is no disk here, so it must be open in the editor',
  }[fault];
}
