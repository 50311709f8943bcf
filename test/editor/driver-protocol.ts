/** Starts each line that a suite says to whoever watches the run. */
export const SPOKEN = 'suite| ';

/** One thing that the suite asks of the browser. Selectors are CSS; a webview is named by an element that it has. */
export type DriverRequest =
  | { readonly action: 'screenshot'; readonly name: string; readonly webview?: string }
  | {
      readonly action: 'evaluate-in-webview';
      readonly webview: string;
      readonly source: string;
      readonly argument?: unknown;
    }
  | { readonly action: 'evaluate-in-workbench'; readonly source: string; readonly argument?: unknown }
  | { readonly action: 'click-in-webview'; readonly selector: string; readonly force?: boolean }
  | { readonly action: 'hover-in-webview'; readonly selector: string }
  | { readonly action: 'drag-in-webview'; readonly selector: string; readonly x: number; readonly y: number }
  | { readonly action: 'focus-webview'; readonly selector: string }
  | { readonly action: 'hover-in-workbench'; readonly selector: string }
  | { readonly action: 'press-key'; readonly key: string }
  | { readonly action: 'type-text'; readonly text: string; readonly everyMs?: number }
  | { readonly action: 'resize-window'; readonly width: number; readonly height: number }
  | { readonly action: 'problems' };

export type DriverReply =
  { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly error: string };
