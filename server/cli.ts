import { version } from '../package.json';
import { check } from './cli/check.js';
import { draw } from './cli/draw.js';
import { joints } from './cli/joints.js';
import { layouts } from './cli/layouts.js';
import { papers } from './cli/papers.js';
import { panels } from './cli/panels.js';
import { CouldNotRun, isBrokenPipe } from './cli/run.js';
import type { Outcome } from './cli/run.js';
import { setUps } from './cli/set-ups.js';
import { reference, schema, shop } from './cli/texts.js';

const HELP = `borewright ${version}: checks cabinet jobs for stop-and-fence boring machines, and draws their bore maps.

  borewright check PATH... [--format text|json]   findings of job files; of a folder, every *.carcass.yaml below it
  borewright panels FILE [--format text|json]     panels of a job with their sizes and bores
  borewright setups FILE [--format text|json]     set-ups of a job in the order to run, replayed before they are printed;
      [--machine NAME]                            only those of one machine
  borewright joints FILE [--format text|json]     what every joint can come out like by the shop’s tolerances
  borewright layouts FILE [--format text|json]    cut list of a job, and how its panels are cut from sheets
  borewright papers FILE --out DIR                shop papers to print: cut list, sheet layouts, banding list, set-up list,
      [--only LIST] [--as LIST]                   bore maps, hardware list, assembly and checking papers; as pdf, html, csv,
      [--page a4|letter]                          text, and of bore maps svg and dxf, a file for each panel
  borewright draw FILE --out DIR                  bore map of every panel as SVG, and one page to look at them
  borewright reference                            what every finding means, as Markdown
  borewright shop                                 a shop file to begin with: the built-in shop
  borewright shop FILE [EARLIER]                  the load of bits that a shop’s joints share, and what an earlier version
                                                  of the file had instead
  borewright schema job|shop                      JSON Schema of job files or shop files
  borewright server --stdio                       language server, for any editor

  --help, --version

Exit code: 0 no errors, 1 errors were found, 2 it could not run.
`;

const COMMANDS: Readonly<Record<string, (args: readonly string[]) => Outcome | Promise<Outcome>>> = {
  check,
  panels,
  setups: setUps,
  joints,
  layouts,
  papers,
  draw,
  reference,
  shop,
  schema,
};

async function main(args: readonly string[]): Promise<void> {
  const [command, ...rest] = args;
  if (command === 'server') {
    const { startServer } = await import('./node.js');
    startServer();
    return;
  }
  const { output, errors, code } = await run(command, rest);
  if (errors !== '') process.stderr.write(errors);
  process.exitCode = code;
  process.stdout.write(output);
}

async function run(command: string | undefined, args: readonly string[]): Promise<Outcome> {
  const asksHelp = command === '--help' || command === '-h' || command === 'help' || args.includes('--help');
  if (asksHelp) return { output: HELP, errors: '', code: 0 };
  if (command === '--version' || command === '-v') return { output: `${version}\n`, errors: '', code: 0 };
  try {
    const known = command !== undefined && Object.hasOwn(COMMANDS, command) ? COMMANDS[command] : undefined;
    if (known !== undefined) return await known(args);
    const what = command === undefined ? 'No command is given' : `There is no command ‘${command}’`;
    throw new CouldNotRun(
      `${what}. It is one of: ${[...Object.keys(COMMANDS), 'server'].join(', ')}; see borewright --help.`,
    );
  } catch (error) {
    if (error instanceof CouldNotRun) return { output: '', errors: `borewright: ${error.message}\n`, code: 2 };
    const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { output: '', errors: `borewright failed; the fault is not yours: ${words}\n`, code: 2 };
  }
}

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: Error) => {
    if (!isBrokenPipe(error)) throw error;
    process.exit(process.exitCode);
  });
}

await main(process.argv.slice(2));
