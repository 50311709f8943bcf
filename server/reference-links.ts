import type { ReferencePage } from '../shared-core/service.js';

/** Where pages of the reference are opened. */
export interface ReferenceLinks {
  /** The address of a place on a page. */
  address(page: ReferencePage, anchor: string): string;
  /** What a link in a text for people leads to: a command of the client where it has one, else the address. */
  link(page: ReferencePage, anchor: string): string;
}

/**
 * @param folder a folder of Markdown files, or on the web the folder that `borewright reference --out` has made
 * @param command a command of the client that is given page and anchor; not to be trusted
 */
export function linksTo(folder: string | null, command: unknown): ReferenceLinks | null {
  if (folder === null) return null;
  const ending = /^https?:/i.test(folder) ? 'html' : 'md';
  const address: ReferenceLinks['address'] = (page, anchor) =>
    `${folder.replace(/\/$/, '')}/${page}.${ending}#${anchor}`;
  const link: ReferenceLinks['link'] = (page, anchor) =>
    `command:${String(command)}?${encodeURIComponent(JSON.stringify([page, anchor]))}`;
  return { address, link: typeof command === 'string' && /^[\w.]+$/.test(command) ? link : address };
}
