/** What a code leads back to. */
export interface CodedPanel {
  /** Name of the job file, without its folders. */
  readonly file: string;
  readonly carcass: string;
  readonly panel: string;
}

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
