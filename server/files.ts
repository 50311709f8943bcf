import type { FileFault } from './messages.js';

/** What came of asking for a file, or why it cannot be had. */
export type FileReading =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: FileFault };

/**
 * The files around the open documents. The server sees the disk only through this, so that it also runs where there is
 * none. Nothing here throws.
 */
export interface Files {
  /** The text of a file, read anew whenever it has changed. */
  read(uri: string): FileReading;
  /** URIs of the files in the folder of `uri`, in the order of their names. */
  beside(uri: string): readonly string[];
  /** URIs of the job and shop files in a folder and the folders in it, links to folders left aside, in the order of their paths. */
  within(folder: string): readonly string[];
  /** Where a file really lies, links followed; as it is given where there is none. */
  real(uri: string): string;
}

/** Where there is no disk: only open documents exist. */
export const noFiles: Files = {
  read: () => ({ ok: false, fault: 'no-disk' }),
  beside: () => [],
  within: () => [],
  real: (uri) => uri,
};

/** By its name. */
export const isJob = (name: string): boolean => /\.carcass\.ya?ml$/i.test(name);

/** By its name. */
export const isShop = (name: string): boolean => /\.shop\.ya?ml$/i.test(name);

/** The last step of a URI or path, decoded. */
export function baseName(uri: string): string {
  const last = uri.slice(uri.lastIndexOf('/') + 1);
  try {
    return decodeURIComponent(last);
  } catch {
    return last;
  }
}

/**
 * The URI that a job's `shop:` means: a path relative to the job's folder, of a shop file. Null where it is anything else
 * (an address, an absolute path, a file that is no shop file), so that a job cannot make the server read other files.
 */
export function shopUri(jobUri: string, reference: string): string | null {
  const path = reference.trim().replaceAll('\\', '/');
  if (!isShop(path) || path.startsWith('/') || path.includes('\0') || /^[a-z][a-z0-9+.-]*:/i.test(path)) return null;
  try {
    // Encoded step by step, so that '#', '?' and '%' in a file name stay what they are.
    return normalUri(new URL(path.split('/').map(encodeURIComponent).join('/'), jobUri).href);
  } catch {
    return null;
  }
}

/** One spelling for one file: editors differ in what they percent-encode (a drive's colon, for one). */
export function normalUri(uri: string): string {
  try {
    const url = new URL(uri);
    if (url.protocol !== 'file:') return url.href;
    const path = url.pathname
      .split('/')
      .map((step) => encodeURIComponent(decodeURIComponent(step)))
      .join('/');
    // Windows drive letters come in both cases.
    return `file://${url.host}${path.replace(/^\/([A-Za-z])%3A(?=\/|$)/, (_, drive: string) => `/${drive.toLowerCase()}%3A`)}`;
  } catch {
    return uri;
  }
}
