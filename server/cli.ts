import { version } from '../package.json';
import { tell } from '../shared-core/words/message.js';
import { check } from './cli/check.js';
import { HELP, say } from './cli/messages.js';
import { draw } from './cli/draw.js';
import { joints } from './cli/joints.js';
import { layouts } from './cli/layouts.js';
import { papers } from './cli/papers.js';
import { panels } from './cli/panels.js';
import { CouldNotRun, isBrokenPipe } from './cli/run.js';
import { withoutControls } from '../shared-core/words/controls.js';
import { faultOf } from './disk.js';
import type { Outcome } from './cli/run.js';
import { setUps } from './cli/set-ups.js';
import { reference, schema, shop } from './cli/texts.js';

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
  // Names are the owner's, and a terminal would obey what stands in them.
  if (errors !== '') process.stderr.write(withoutControls(errors));
  process.exitCode = code;
  process.stdout.write(withoutControls(output));
}

async function run(command: string | undefined, args: readonly string[]): Promise<Outcome> {
  const asksHelp = command === '--help' || command === '-h' || command === 'help' || args.includes('--help');
  if (asksHelp) return { output: `${tell(say.about({ version }), 'mm')}\n\n${HELP.commands}`, errors: '', code: 0 };
  if (command === '--version' || command === '-v') return { output: `${version}\n`, errors: '', code: 0 };
  try {
    const known = command !== undefined && Object.hasOwn(COMMANDS, command) ? COMMANDS[command] : undefined;
    if (known !== undefined) return await known(args);
    const commands = [...Object.keys(COMMANDS), 'server'];
    throw new CouldNotRun(
      command === undefined ? say.noCommand({ commands }) : say.unknownCommand({ command, commands }),
    );
  } catch (error) {
    if (error instanceof CouldNotRun)
      return { output: '', errors: `${tell(say.refused({ why: error.message }), 'mm')}\n`, code: 2 };
    const words = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { output: '', errors: `${tell(say.ownFault({ words }), 'mm')}\n`, code: 2 };
  }
}

// A reader that has seen enough (`| head`) closes the pipe: that is no fault. A disk that is full is one.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: Error) => {
    if (isBrokenPipe(error)) process.exit(process.exitCode);
    if (stream === process.stdout)
      process.stderr.write(
        `${tell(say.refused({ why: tell(say.notPrinted({ fault: faultOf(error) }), 'mm') }), 'mm')}\n`,
      );
    process.exit(2);
  });
}

await main(process.argv.slice(2));
