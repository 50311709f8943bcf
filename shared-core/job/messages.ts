import type { Micrometres } from '../length/units.js';
import { counted, listed, quoted, verb } from '../words/english.js';
import { messages } from '../words/message.js';

export const HOW_TO_WRITE_CARCASSES =
  'Write `carcasses:` and below it, two spaces in, a name with a colon and the keys `kind` and `width`.';

interface Below {
  readonly key: string;
  readonly value: string;
  /** How many lines go in with it. */
  readonly lines: number;
}

/** What reading a job has to tell beside what its schema says. */
export const say = messages('job-text', {
  carcassesNotNamed: () => `Each carcass needs a name. ${HOW_TO_WRITE_CARCASSES}`,
  keyTwice: ({ key }: { readonly key: string }) =>
    `${quoted(key)} is written twice; only the first counts. Remove this one.`,
  keyFirst: ({ key }: { readonly key: string }) => `${quoted(key)} is first written here.`,
  removeThisKey: ({ key }: { readonly key: string }) => `Remove this ${quoted(key)}`,
  nameTwice: ({ name }: { readonly name: string }) =>
    `Two carcasses are named ${quoted(name)}, so their panels cannot be told apart. Give this one another name.`,
  nameFirst: ({ name }: { readonly name: string }) => `${quoted(name)} is first used here.`,
  placeTwice: ({ place }: { readonly place: Micrometres }, show) =>
    `${show.exact(place)} is already in this list, and only one bore is made there. Remove it, or write another place.`,
  removeSecond: ({ place }: { readonly place: Micrometres }, show) => `Remove the second ${show.exact(place)}`,

  outsideOwner: ({ key, owner }: { readonly key: string; readonly owner: string }) =>
    `\`${key}\` starts in the same column as \`${owner}\`, where the names of carcasses stand. Write it inside \`${owner}\`.`,
  notIndented: ({
    key,
    owner,
    lines,
    by,
  }: {
    readonly key: string;
    readonly owner: string;
    readonly lines: number;
    readonly by: number;
  }) =>
    `${verb(lines, `The line of \`${key}\` belongs to \`${owner}\` but starts`, `The ${lines} lines from \`${key}\` on belong to \`${owner}\` but start`)} in the same column. Indent ${verb(lines, 'it', 'them')} by ${counted(by, 'more column')}.`,
  indent: ({ lines, by }: { readonly lines: number; readonly by: number }) =>
    `Indent ${verb(lines, 'it', 'them')} by ${counted(by, 'more column')}`,
  noNameAbove: ({ key, name }: { readonly key: string; readonly name: string }) =>
    `\`${key}\` stands where the name of a carcass belongs. Write a name and a colon, such as \`${name}:\`, on a line above it, and indent the keys of the carcass by two columns.`,
  nameThem: ({ names }: { readonly names: readonly string[] }) =>
    `Name ${verb(names.length, 'it', 'them')} ${listed(names)}`,
  nameIt: ({ name }: { readonly name: string }) => `Name it ${name}`,
  kindBesideName: (below: Below) =>
    `${besideName(below)} Write \`kind: ${below.value}\` below the name, and indent it and ${those(below)} by two columns.`,
  kindBelow: ({ key, value }: Pick<Below, 'key' | 'value'>) => `Write kind: ${value} below ${key}`,
  valueBesideName: (below: Below) =>
    `${besideName(below)} Remove the value, and indent ${those(below)} by two columns.`,
  removeValue: ({ value, lines }: Pick<Below, 'value' | 'lines'>) => `Remove ${value} and indent ${those({ lines })}`,
});

function besideName({ key, value, lines }: Below): string {
  return `\`${key}\` has the value ${quoted(value)} on its line and its ${verb(lines, 'key', 'keys')} in the same column.`;
}

function those({ lines }: Pick<Below, 'lines'>): string {
  return verb(lines, 'the line below', `the ${lines} lines below`);
}
