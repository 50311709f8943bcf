import { encode } from 'uqr';
import type { CodeShape } from '../../drawing/scene/scene.js';

/** What a code leads back to. */
export interface CodedPanel {
  /** Name of the job file, without its folders. */
  readonly file: string;
  readonly carcass: string;
  readonly panel: string;
}

/** The blank border that a reader needs about a code, in squares (ISO/IEC 18004: 4). */
export const QUIET = 4;

/** 'kitchen.carcass.yaml#sink/left': a reference to a part of a file in the form of RFC 3986, parts escaped. */
export function codeText({ file, carcass, panel }: CodedPanel): string {
  return `${encodeURIComponent(file)}#${encodeURIComponent(carcass)}/${encodeURIComponent(panel)}`;
}

/** The panel that a text out of a code is of; null for any other text. */
export function readCode(text: string): CodedPanel | null {
  const [, file, carcass, panel] = /^([^#/]+)#([^#/]+)\/([^#/]+)$/.exec(text.trim()) ?? [];
  if (file === undefined || carcass === undefined || panel === undefined) return null;
  try {
    return {
      file: decodeURIComponent(file),
      carcass: decodeURIComponent(carcass),
      panel: decodeURIComponent(panel),
    };
  } catch {
    return null;
  }
}

/**
 * A text as QR code (ISO/IEC 18004) that can be read with up to 15 % of it dirty or scratched; null where the text is too long
 * for one.
 */
export function codeSquares(text: string): CodeShape['dark'] | null {
  // The most that a code takes at this level.
  if (new TextEncoder().encode(text).length > 2331) return null;
  return encode(text, { ecc: 'M', border: 0 }).data;
}
