import { readFileSync } from 'node:fs';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { Client, demo, Folder, wordsOf } from '../protocol/client.js';
import { NEVER_SHOWN } from '../core/findings/jobs.js';
import type { Damaged } from './documents.js';

/** So many documents are open at once, as the server waits after each for quiet. */
const LANES = 8;

/** The built server, which is given damaged files as an editor would. */
export class ThroughServer {
  count = 0;

  private constructor(
    readonly client: Client,
    readonly folder: Folder,
  ) {}

  static async start(): Promise<ThroughServer> {
    const folder = new Folder();
    for (const name of ['shed.shop.yaml', 'faults.shop.yaml']) folder.write(name, demo(name));
    return new ThroughServer(await Client.start(), folder);
  }

  /**
   * Opens every document, asks of it what an editor asks, and closes it.
   * @param longest milliseconds that one may take; where it takes more, it is opened again by itself
   * @returns what went wrong, with the document
   */
  async read(files: readonly Damaged[], longest: number): Promise<readonly string[]> {
    const faults: string[] = [];
    const slow: Damaged[] = [];
    const lane = async (first: number): Promise<void> => {
      for (let i = first; i < files.length; i += LANES) {
        const file = files[i]!;
        if ((await this.#read(file, faults)) > longest) slow.push(file);
      }
    };
    await Promise.all(Array.from({ length: LANES }, (_, first) => lane(first)));
    for (const file of slow) {
      const took = await this.#read(file, faults);
      if (took > longest) faults.push(`through the server it takes ${took.toFixed(0)} ms: ${JSON.stringify(file)}`);
    }
    faults.push(...this.client.errors.splice(0));
    return faults;
  }

  /** @returns milliseconds that the processor was at work for the server meanwhile, other documents included */
  async #read(file: Damaged, faults: string[]): Promise<number> {
    this.count += 1;
    const { kind, text } = file;
    const uri = this.folder.uri(kind === 'job' ? `${this.count}.carcass.yaml` : `${this.count}.shop.yaml`);
    const began = this.#worked();
    try {
      const found = await this.client.open(uri, text, `borewright-${kind}`);
      const took = this.#worked() - began;
      const lines = text.split(/\r\n|\n|\r/);
      for (const one of found) check(one, lines);
      const last = { line: lines.length - 1, character: lines.at(-1)!.length };
      const textDocument = { uri };
      await this.client.hover(uri, { line: Math.floor(lines.length / 2), character: 3 });
      await this.client.completion(uri, last);
      await this.client.symbols(uri);
      await this.client.ask('textDocument/formatting', { textDocument, options: { tabSize: 2, insertSpaces: true } });
      await this.client.codeActions(uri, { start: { line: 0, character: 0 }, end: last }, [
        'quickfix',
        'source.fixAll',
      ]);
      if (kind === 'job') await this.client.drawing({ uri, position: last });
      return took;
    } catch (fault) {
      faults.push(`through the server: ${String(fault)}: ${JSON.stringify(file)}`);
      return 0;
    } finally {
      await this.client.close(uri);
    }
  }

  /** Milliseconds of the processor since the server began, as other programs may be at work too; 0 where the machine does not tell. */
  #worked(): number {
    try {
      const fields = readFileSync(`/proc/${this.client.process.pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
      return 10 * (Number(fields[11]) + Number(fields[12]));
    } catch {
      return 0;
    }
  }

  /** In megabytes; 0 where the machine does not tell. */
  memory(): number {
    try {
      const [, kilobytes] =
        /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${this.client.process.pid}/status`, 'utf8')) ?? [];
      return Math.round(Number(kilobytes) / 1000);
    } catch {
      return 0;
    }
  }

  async stop(): Promise<void> {
    await this.client.stop();
    this.folder.close();
  }
}

/** Throws where a finding stands outside its text or has no words. */
function check(one: Diagnostic, lines: readonly string[]): void {
  const { start, end } = one.range;
  const isInText = end.line < lines.length && end.character <= lines[end.line]!.length;
  if (!isInText || start.line > end.line) throw new Error(`${one.code} stands at ${JSON.stringify(one.range)}`);
  if (wordsOf(one) === '' || NEVER_SHOWN.has(String(one.code))) throw new Error(`${one.code}: ${wordsOf(one)}`);
}
