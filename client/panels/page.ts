import * as vscode from 'vscode';
import { LANGUAGE } from '../spoken.js';

/** Where the page's script and style lie; nothing else may be loaded. */
function pageRoot(extension: vscode.Uri): vscode.Uri {
  return vscode.Uri.joinPath(extension, 'dist', 'webview');
}

/** What a page may do: run its script, and load nothing but its own files. */
export function pageOptions(extension: vscode.Uri): vscode.WebviewOptions {
  return {
    enableScripts: true,
    enableForms: false,
    enableCommandUris: false,
    localResourceRoots: [pageRoot(extension)],
  };
}

/** A page: the name of its script and its style, and its title. */
export interface Page {
  readonly name: 'preview' | 'box' | 'machine' | 'shop';
  readonly title: string;
}

/** The page, loaded once for a panel: it runs scripts of ours alone, has no inline style, and reaches nothing outside. */
export function pageHtml(webview: vscode.Webview, extension: vscode.Uri, page: Page): string {
  const root = pageRoot(extension);
  const file = (name: string): string => webview.asWebviewUri(vscode.Uri.joinPath(root, name)).toString();
  const nonce = [...crypto.getRandomValues(new Uint8Array(16))]
    .map((one) => one.toString(16).padStart(2, '0'))
    .join('');
  // What the core says in another language comes before the page that says it.
  const scripts = [...(LANGUAGE === 'en' ? [] : [`words-${LANGUAGE}.js`]), `${page.name}.js`];
  const policy = [
    "default-src 'none'",
    `script-src 'nonce-${nonce}'`,
    `style-src ${webview.cspSource}`,
    // Drawings that are made into dots.
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return `<!doctype html>
<html lang="${LANGUAGE}">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${policy}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>${page.title}</title>
    <link rel="stylesheet" href="${file(`${page.name}.css`)}">
  </head>
  <body>
${scripts.map((name) => `    <script nonce="${nonce}" src="${file(name)}"></script>`).join('\n')}
  </body>
</html>`;
}
