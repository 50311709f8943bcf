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
  nameEmpty: ({ of }: { readonly of: string }) => `A ${of} needs a name.`,
  nameOfLines: () => 'A name stands on one line.',
  nameNone: () => '‘none’ means nothing at all, so it cannot be a name.',
  nameTaken: ({ of, name }: { readonly of: string; readonly name: string }) =>
    `There is a ${of} called ${quoted(name)} already.`,

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
    'no-disk': 'there is no disk here, so it must be open in the editor',
  }[fault];
}
