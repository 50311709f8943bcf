import { beforeEach, expect, test, vi } from 'vitest';
import * as vscode from 'vscode';
import type { DrawingReply } from '../../shared-core/drawing/messages/drawing.js';
import { Preview } from '../../client/panels/preview/preview.js';

// As much of an editor as a preview asks for: one open document, and no cursor in it.
const URI = 'file:///jobs/job.carcass.yaml';
vi.mock('vscode', () => {
  const event = () => ({ dispose: () => undefined });
  const Uri = {
    parse: (text: string) => ({ toString: () => text, path: text }),
    joinPath: (_: unknown, ...steps: readonly string[]) => ({ toString: () => steps.join('/') }),
  };
  return {
    env: { language: 'en' },
    Uri,
    window: {
      activeTextEditor: undefined,
      visibleTextEditors: [],
      onDidChangeActiveTextEditor: event,
      onDidChangeTextEditorSelection: event,
    },
    workspace: {
      textDocuments: [{ uri: Uri.parse('file:///jobs/job.carcass.yaml'), version: 1 }],
      onDidChangeTextDocument: event,
    },
  };
});
// It brings the client of the server along, which needs a whole editor.
vi.mock('../../client/papers/write-papers.js', () => ({ WRITE_PAPERS: '' }));

const answer = (version: number): DrawingReply => ({
  kind: 'nothing',
  uri: URI,
  version,
  carcasses: [],
  reason: 'no panel',
});

let posted: { readonly type: string; readonly [key: string]: unknown }[];
let page: (message: object) => void;
let preview: Preview;
/** The version of the text that the server is asked about. */
let version: number;

beforeEach(() => {
  posted = [];
  version = 1;
  const panel = {
    title: '',
    webview: {
      cspSource: '',
      asWebviewUri: (uri: unknown) => uri,
      onDidReceiveMessage: (hear: (message: object) => void) => {
        page = hear;
        return { dispose: () => undefined };
      },
      postMessage: (message: (typeof posted)[number]) => {
        posted.push(message);
        return Promise.resolve(true);
      },
    },
    onDidDispose: () => undefined,
  };
  preview = new Preview(
    panel as unknown as vscode.WebviewPanel,
    vscode.Uri.parse(''),
    { uri: URI, view: 'panel', follow: true, carcass: 'sink', panel: 'left' },
    {
      ask: {
        drawing: () => Promise.resolve(answer(version)),
        picture: () => Promise.resolve(null),
        moveShelf: () => Promise.reject(new Error('the server is gone')),
      },
      share: { get: () => 30, set: () => undefined } as never,
      printStore: vscode.Uri.parse(''),
      another: () => undefined,
      onClosed: () => undefined,
    },
  );
  page({ type: 'ready', pane: { width: 120, height: 90 } });
});
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 20));
const versions = (): readonly unknown[] =>
  posted.flatMap(({ type, reply }) => (type === 'reply' ? [(reply as DrawingReply).version] : []));

test('a file that was closed and opened again, and is counted from 1 again, is drawn', async () => {
  await settled();
  for (version of [8, 1, 2]) {
    await preview.refresh();
  }
  expect(versions()).toEqual([1, 8, 1, 2]);
});

test('what fails in answer to the page is told to it', async () => {
  await settled();
  page({ type: 'move-shelf', shelf: 'shelf-1', holes: 1 });
  await settled();
  expect(posted.at(-1)).toEqual({ type: 'trouble', message: 'The drawing could not be made: the server is gone' });
});
