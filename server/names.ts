import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Location, Position } from 'vscode-languageserver';
import {
  isLocal,
  namesAround,
  namesOfText,
  sameThing,
  shopNamed,
  type Mention,
  type NamesOfText,
} from '../shared-core/service.js';
import { baseName, isJob, isShop, normalUri, shopUri } from './files.js';
import { NOT_OPEN, offsetOf, rangeOf } from './text.js';
import { kindOf, type OpenFile, type Workspace } from './workspace.js';

/** A job or shop file by its present text: that of the editor where it is open, else that of the disk. */
export interface NamedFile {
  readonly uri: string;
  readonly kind: 'job' | 'shop';
  readonly document: TextDocument;
}

/** A name, and the file that it stands in. */
export interface Stand {
  readonly file: NamedFile;
  readonly mention: Mention;
}

/** The names in all job and shop files of the workspace, and which of them mean one thing. Nothing here throws. */
export class Names {
  readonly #kept = new Map<string, NamesOfText>();
  /** Folders that the editor has open, as URIs. */
  folders: readonly string[] = [];

  constructor(readonly workspace: Workspace) {}

  /** The name at a position, both its ends included. Null where none stands. */
  at(file: OpenFile, position: Position): Mention | null {
    const offset = offsetOf(file.document, position);
    const near = file.kind === 'job' ? namesAround(file.analysis, offset) : this.in(named(file));
    return near.find(({ start, end }) => start <= offset && offset <= end) ?? null;
  }

  /** Every place where the thing of a name is described or asked for, in all files that share it; the own file first. */
  everywhere(file: OpenFile, mention: Mention): readonly Stand[] {
    return this.#sharing(named(file), mention).flatMap((one) =>
      this.in(one)
        .filter((other) => this.#same(file, mention, one, other))
        .map((found): Stand => ({ file: one, mention: found })),
    );
  }

  /** Every thing described in a file of the workspace. */
  described(): readonly Stand[] {
    return this.files().flatMap((file) =>
      this.in(file)
        .filter(({ gives }) => gives)
        .map((mention): Stand => ({ file, mention })),
    );
  }

  /** The names in one file, in the order of the text. */
  in({ uri, kind, document }: NamedFile): readonly Mention[] {
    const names = namesOfText(kind, document.getText(), this.#kept.get(uri));
    this.#kept.set(uri, names);
    return names.mentions;
  }

  /** The file that a job's `shop:` means; null where it names none that can be read. */
  shopOf(job: NamedFile): NamedFile | null {
    const uri = this.shopUriOf(job);
    return uri === null ? null : this.file(uri);
  }

  /** What a job's `shop:` means, whether there is such a file or not. */
  shopUriOf(job: NamedFile): string | null {
    const said = shopNamed(job.document.getText());
    return said === null ? null : shopUri(job.uri, said.name);
  }

  /** Jobs that name the shop file. */
  jobsOf(shop: string): readonly NamedFile[] {
    const uri = normalUri(shop);
    return this.files().filter((file) => file.kind === 'job' && this.shopUriOf(file) === uri);
  }

  /** The job and shop files that are open or lie in the folders of the workspace. */
  files(): readonly NamedFile[] {
    const { workspace } = this;
    const open = workspace.all().map(({ uri }) => normalUri(uri));
    const around = open
      .flatMap((uri) => workspace.files.beside(uri))
      .filter((uri) => isJob(baseName(uri)) || isShop(baseName(uri)));
    const below = this.folders.flatMap((folder) => workspace.files.within(folder));
    return [...new Set([...open, ...around, ...below])].flatMap((uri) => this.file(uri) ?? []);
  }

  /** Null where there is no such file, or it is neither a job nor a shop file. */
  file(uri: string): NamedFile | null {
    const open = this.workspace.document(uri);
    if (open !== undefined) {
      const kind = kindOf(open);
      return kind === null ? null : { uri: normalUri(uri), kind, document: open };
    }
    const kind = isJob(baseName(uri)) ? 'job' : isShop(baseName(uri)) ? 'shop' : null;
    const reading = kind === null ? null : this.workspace.files.read(uri);
    if (kind === null || reading?.ok !== true) return null;
    return {
      uri: normalUri(uri),
      kind,
      document: TextDocument.create(uri, `borewright-${kind}`, NOT_OPEN, reading.text),
    };
  }

  forget(uri: string): void {
    this.#kept.delete(normalUri(uri));
  }

  /** The own file, then the others whose text may name the same thing. */
  #sharing(own: NamedFile, mention: Mention): readonly NamedFile[] {
    if (isLocal(mention)) return [own];
    const shop = mention.of === 'shop-file' || own.kind === 'job' ? this.shopUriOf(own) : own.uri;
    if (shop === null) return [own];
    const described = mention.of === 'shop-file' ? null : this.file(shop);
    const others = [...(described === null ? [] : [described]), ...this.jobsOf(shop)];
    return [own, ...others.filter(({ uri }) => uri !== own.uri)];
  }

  #same(own: OpenFile, mention: Mention, file: NamedFile, other: Mention): boolean {
    if (mention.of !== 'shop-file' || other.of !== 'shop-file') return sameThing(mention, other);
    // Two folders write the way to one file differently.
    return shopUri(normalUri(own.document.uri), mention.name) === shopUri(file.uri, other.name);
  }
}

/** An open file as one among others. */
export function named({ document, kind }: OpenFile): NamedFile {
  return { uri: normalUri(document.uri), kind, document };
}

/** Where a name stands, as the protocol says it. */
export function locationOf({ file: { document }, mention: { start, end } }: Stand): Location {
  return { uri: document.uri, range: rangeOf(document, start, end) };
}
