/** Path of the browser that shows the editor. */
export function chromiumPath(): string;
/** Path of the Node that runs the editor's server. */
export function node24Path(): string;
/** Folder of the editor's server. */
export function hostPath(): string;
export function ensureNode24(): void;
export function ensureChromium(): void;
export function ensureHost(): void;
