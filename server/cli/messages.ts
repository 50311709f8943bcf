import { counted, listed, quoted } from '../../shared-core/words/english.js';
import { messages } from '../../shared-core/words/message.js';
import { labels } from '../../shared-core/words/told.js';
import { because, type FileFault } from '../messages.js';

type OfPath = { readonly path: string };

/** How a command is written, for whoever has written it otherwise. */
export const USAGES = labels({
  check: 'borewright check PATH...',
  panels: 'borewright panels FILE',
  setups: 'borewright setups FILE',
  joints: 'borewright joints FILE',
  layouts: 'borewright layouts FILE',
  papers: 'borewright papers FILE --out DIR',
  draw: 'borewright draw FILE --out DIR',
});

export const HELP = labels({
  commands: `  borewright check PATH... [--format text|json]   findings of job and shop files; of a folder, every *.carcass.yaml
                                                  below it; of -, a job that comes by standard input
  borewright panels FILE [--format text|json]     panels of a job with their sizes and bores
  borewright setups FILE [--format text|json]     set-ups of a job in the order to run, replayed before they are printed;
      [--machine NAME]                            only those of one machine
  borewright joints FILE [--format text|json]     what can come out at every joint by the shop’s tolerances
  borewright layouts FILE [--format text|json]    cut list of a job, and how its panels are cut from sheets
  borewright papers FILE --out DIR                shop papers to print: cut list, sheet layouts, banding list, set-up list,
      [--only LIST] [--as LIST]                   bore maps, hardware list, assembly and checking papers, panel labels, cost
      [--page a4|letter]                          and time; as pdf, html, csv, json, text, and of bore maps svg and dxf, a
      [--seconds N]                               file for each panel; sheet layouts are improved for N seconds, or until
      [--language en|de|fr]                       Ctrl-C takes the best so far; csv, json and dxf are in English always
  borewright draw FILE --out DIR                  bore map of every panel as SVG, and one page to look at them
  borewright reference [PAGE]                     what every finding means, as Markdown; or every key: job-files, shop-files
  borewright reference --out DIR                  all of it as pages for a browser and as Markdown
  borewright shop                                 a shop file to begin with: the built-in shop
  borewright shop FILE [EARLIER]                  the load of bits that a shop’s joints share, and what an earlier version
                                                  of the file had instead
  borewright schema job|shop|paper                JSON Schema of job files, shop files or papers as JSON
  borewright server --stdio                       language server, for any editor

  --help, --version

Exit code: 0 no errors, 1 errors were found, 2 it could not run.
`,
});

/** What the command line says of itself; what it says of jobs comes from the core. */
export const say = messages('command-line', {
  about: ({ version }: { readonly version: string }) =>
    `borewright ${version}: checks cabinet jobs for stop-and-fence boring machines, and draws their bore maps.`,
  noCommand: ({ commands }: { readonly commands: readonly string[] }) =>
    `No command is given. Write one of ${listed(commands, 'or')}; see borewright --help.`,
  unknownCommand: ({ command, commands }: { readonly command: string; readonly commands: readonly string[] }) =>
    `There is no command ${quoted(command)}. Use ${listed(commands, 'or')}; see borewright --help.`,
  refused: ({ why }: { readonly why: string }) => `borewright: ${why}`,
  notPrinted: ({ fault }: { readonly fault: FileFault }) => `The output cannot be written: ${because(fault)}.`,
  ownFault: ({ words }: { readonly words: string }) => `borewright failed; the fault is not yours: ${words}`,

  // Arguments.
  /** @param words those of the reader of arguments */
  arguments: ({ words }: { readonly words: string }) => `${words.replace(/\.?$/, '.')} See borewright --help.`,
  jobOrFolder: () => `Name a job file or a folder: ${USAGES.check}`,
  oneJob: ({ command }: { readonly command: keyof typeof USAGES }) => `Name one job file: ${USAGES[command]}.`,
  jobAndFolder: ({ command }: { readonly command: 'papers' | 'draw' }) =>
    `Name one job file and a folder: ${USAGES[command]}.`,
  format: ({ given }: { readonly given: string }) => `${quoted(given)} is not a \`--format\`. Use text or json.`,
  page: ({ given, known }: { readonly given: string; readonly known: readonly string[] }) =>
    `${quoted(given)} is not a \`--page\`. Use ${listed(known, 'or')}.`,
  language: ({ given, known }: { readonly given: string; readonly known: readonly string[] }) =>
    `${quoted(given)} is not a \`--language\`. Use ${listed(known, 'or')}.`,
  list: ({
    option,
    given,
    known,
  }: {
    readonly option: '--only' | '--as';
    readonly given: string;
    readonly known: readonly string[];
  }) => `${quoted(given)} is not one of \`${option}\`. Write a list of ${listed(known)} with commas between them.`,
  referenceArguments: ({ pages }: { readonly pages: readonly string[] }) =>
    `Name one page (${listed(pages, 'or')}) or a folder: borewright reference PAGE, or borewright reference --out DIR.`,
  shopArguments: () => 'borewright shop takes a shop file, and an earlier version of it.',
  whichSchema: () =>
    'Name the files that the schema is of: borewright schema job, borewright schema shop or borewright schema paper.',
  otherMachine: ({ path, machine, machines }: OfPath & { readonly machine: string; readonly machines: string }) =>
    `No set-up of ${path} is on a machine called ${quoted(machine)}; they are on ${machines}.`,

  // Files.
  isFolder: ({ path }: OfPath) => `${path}: this is a folder; name one job file.`,
  isShop: ({ path }: OfPath) => `${path}: this is a shop file; name a job file (NAME.carcass.yaml).`,
  notAShop: ({ path }: OfPath) => `${path}: this is not a shop file (NAME.shop.yaml).`,
  noJobIn: ({ path }: OfPath) =>
    `${path}: there is no job file (*.carcass.yaml) in this folder, and no shop file (*.shop.yaml).`,
  fault: ({ path, fault }: OfPath & { readonly fault: FileFault }) => `${path}: ${because(fault)}.`,
  notOpened: ({ path }: OfPath) => `${path}: it cannot be opened.`,
  noSaw: () => 'The shop has no panel saw, so nothing can be laid out. Add one under `panel-saws`.',

  seconds: ({ given }: { readonly given: string }) =>
    `${quoted(given)} is not a number of \`--seconds\`. Use a number from 0 to 3600.`,
  enough: () => 'Taking the best sheet layouts so far. Press Ctrl-C again to write nothing.',

  // What was done.
  written: ({ files, folder }: { readonly files: number; readonly folder: string }) =>
    `${counted(files, 'file')} in ${folder}:`,
  withErrors: ({ errors, path }: OfPath & { readonly errors: number }) =>
    `These papers are of a job with ${counted(errors, 'error')}: do not cut or bore before ${errors === 1 ? 'it is' : 'they are'} mended. See borewright check ${path}.`,
  referenceWritten: ({
    files,
    folder,
    page,
  }: {
    readonly files: number;
    readonly folder: string;
    readonly page: string;
  }) => `${counted(files, 'file')} in ${folder}; look at ${page}`,
  drawn: ({ maps, folder, page }: { readonly maps: number; readonly folder: string; readonly page: string }) =>
    `${counted(maps, 'bore map')} in ${folder}; look at ${page}`,
});
