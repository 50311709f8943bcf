import type { FileReading, Files } from './files.js';

/** Files of a window that is not trusted: nothing is read that lies outside its folders, nor through a link that leads out. */
export class BoundedFiles implements Files {
  /** Whether the bounds hold. */
  isRestricted = false;
  /** Folders, as URIs, that may be read in. */
  bounds: () => readonly string[] = () => [];

  readonly #files: Files;

  constructor(files: Files) {
    this.#files = files;
  }

  read(uri: string): FileReading {
    return this.#isInside(uri) ? this.#files.read(uri) : { ok: false, fault: 'outside' };
  }

  beside(uri: string): readonly string[] {
    return this.#files.beside(uri).filter((one) => this.#isInside(one));
  }

  within(folder: string): readonly string[] {
    return this.#files.within(folder).filter((one) => this.#isInside(one));
  }

  real(uri: string): string {
    return this.#files.real(uri);
  }

  #isInside(uri: string): boolean {
    if (!this.isRestricted) return true;
    const real = this.real(uri);
    return this.bounds().some((folder) => real.startsWith(`${this.real(folder).replace(/\/$/, '')}/`));
  }
}
