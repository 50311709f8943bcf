import * as vscode from 'vscode';
import { LSPErrorCodes, ResponseError, State, type BaseLanguageClient } from 'vscode-languageclient';
import type { MachineStepMethod } from '../shared-core/drawing/messages/machine-view.js';
import type { BoxMethod } from '../shared-core/drawing/messages/box-view.js';
import type { DrawingMethod } from '../shared-core/drawing/messages/drawing.js';
import type { PictureMethod, PictureUse } from '../shared-core/drawing/messages/picture.js';
import type { MoveShelfMethod } from '../shared-core/drawing/messages/shelves.js';
import type { ShopViewMethod } from '../shared-core/drawing/messages/shop-view.js';
import type { SetUpsMethod } from '../shared-core/drawing/messages/set-ups.js';
import { tellsCursor } from './cursor.js';
import { say } from './messages.js';
import { REFERENCE_COMMAND } from './language.js';
import { newFile } from './new-file.js';
import { wordsOf } from './panels/latest.js';
import { boxPanels, showBox } from './panels/box/show.js';
import { machinePanels, showMachines } from './panels/machine/show.js';
import { shopPanels, showShop } from './panels/shop/show.js';
import { previewPanels, showPanel, showPreview, withPreview } from './panels/preview/show.js';
import { openScanned } from './papers/scanned.js';
import { WRITE_PAPERS, writePapers } from './papers/write-papers.js';
import { openReference } from './reference.js';
import { Heard } from './report/heard.js';
import { writeReport } from './report/write-report.js';
import { openJobOfShop, openShop } from './shop-files.js';
import { StatusItem } from './status.js';
import { watchOver } from './watch-over.js';

const BOX: BoxMethod = 'borewright/box';
const DRAWING: DrawingMethod = 'borewright/drawing';
const PICTURE: PictureMethod = 'borewright/picture';
const MOVE_SHELF: MoveShelfMethod = 'borewright/moveShelf';
const SHOP_VIEW: ShopViewMethod = 'borewright/shopView';
const SET_UPS: SetUpsMethod = 'borewright/setUps';
const MACHINE_STEP: MachineStepMethod = 'borewright/machineStep';
/** From the server: it has worked out this version of a job file. */
const CHANGED = 'borewright/changed';

let client: BaseLanguageClient | null = null;

/** What the editor's tests look at. */
export interface Extension {
  readonly status: StatusItem;
}

/**
 * Registers commands and panels, and starts the language server. Sends nothing anywhere but to that server.
 * @param language the client of the server, not started yet
 */
export function start(context: vscode.ExtensionContext, language: BaseLanguageClient): Extension {
  client = language;
  const status = new StatusItem();
  const heard = new Heard(language);
  const ask = async (method: string, params: object, outdated?: AbortSignal): Promise<unknown> => {
    await started;
    if (outdated?.aborted === true) return undefined;
    const cancellation = new vscode.CancellationTokenSource();
    const cancel = (): void => cancellation.cancel();
    outdated?.addEventListener('abort', cancel);
    try {
      return await language.sendRequest<unknown>(method, params, cancellation.token);
    } catch (fault) {
      // The text went on meanwhile: the server says when it has worked that out.
      if (fault instanceof ResponseError && PASSED_BY.has(fault.code)) return undefined;
      throw fault;
    } finally {
      outdated?.removeEventListener('abort', cancel);
      cancellation.dispose();
    }
  };
  const previews = previewPanels(context, {
    drawing: (params, outdated) => ask(DRAWING, params, outdated),
    picture: (params) => ask(PICTURE, params),
    moveShelf: (params) => ask(MOVE_SHELF, params),
  });
  const machines = machinePanels(context.extensionUri, context.workspaceState, {
    setUps: (params, outdated) => ask(SET_UPS, params, outdated),
    step: (params) => ask(MACHINE_STEP, params),
  });
  const shops = shopPanels(context.extensionUri, (params, outdated) => ask(SHOP_VIEW, params, outdated));
  const boxes = boxPanels(context.extensionUri, (params, outdated) => ask(BOX, params, outdated));
  const panels = [previews, boxes, machines, shops];
  context.subscriptions.push(
    ...[status, heard],
    tellsCursor(language),
    language.onNotification(CHANGED, (said: unknown) => {
      if (!isOfFile(said)) return;
      status.changed(said);
      heard.changed(said, versionOf(said));
      for (const one of panels) one.changed(said.uri, versionOf(said));
    }),
    language.onDidChangeState(({ newState }) => {
      for (const one of panels) {
        if (newState === State.Running) one.refresh();
        else if (newState === State.Stopped) one.trouble(say.stopped());
      }
    }),
    ...panels.map((one) => vscode.window.registerWebviewPanelSerializer(one.type, one)),
    vscode.commands.registerCommand(REFERENCE_COMMAND, (page: unknown, anchor: unknown) =>
      openReference(context.extensionUri, page, anchor),
    ),
    ...commandsOfServer(language, context.extension, heard),
    ...commandsOf(language, context.workspaceState, ask, { previews, boxes, machines, shops }),
  );
  language.clientOptions.errorHandler = watchOver(language);
  const started = language.start().catch((fault: unknown) => {
    void vscode.window.showErrorMessage(say.notStarted(wordsOf(fault)));
  });
  return { status };
}

function commandsOfServer(
  language: BaseLanguageClient,
  extension: vscode.Extension<unknown>,
  heard: Heard,
): readonly vscode.Disposable[] {
  return [
    vscode.commands.registerCommand('borewright.writeReport', () => writeReport(extension, heard)),
    vscode.commands.registerCommand('borewright.restartServer', () => restart(language, heard)),
    // What a window may read the server is told when it starts.
    vscode.workspace.onDidGrantWorkspaceTrust(() => restart(language, heard)),
  ];
}

/** Every command about a file. */
function commandsOf(
  language: BaseLanguageClient,
  state: vscode.Memento,
  ask: (method: string, params: object) => Promise<unknown>,
  { previews, boxes, machines, shops }: AllPanels,
): readonly vscode.Disposable[] {
  const { registerCommand: command } = vscode.commands;
  return [
    command('borewright.showBoreMap', async (given: unknown) => {
      await shown(given);
      showPreview(previews, 'panel');
    }),
    command('borewright.showAllPanels', async (given: unknown) => {
      await shown(given);
      showPreview(previews, 'all-panels');
    }),
    command('borewright.showAnotherPreview', () => withPreview(previews, (preview) => preview.another())),
    ...Object.entries(PICTURES).map(([name, use]) =>
      command(name, () => withPreview(previews, (preview) => preview.picture(use))),
    ),
    command('borewright.showBoxView', async (given: unknown) => {
      await shown(given);
      showBox(boxes);
    }),
    command('borewright.showMachineView', (...named: readonly unknown[]) => showMachines(machines, 'machine', named)),
    command('borewright.showSetupList', (...named: readonly unknown[]) => showMachines(machines, 'list', named)),
    command(WRITE_PAPERS, (given: unknown) =>
      writePapers(language, state, uriOf(given) ?? machines.active?.uri ?? previews.file() ?? machines.file()),
    ),
    command('borewright.openScanned', (given: unknown) =>
      openScanned(ask, given, (uri, carcass, panel) => showPanel(previews, uri, carcass, panel)),
    ),
    command('borewright.showShopMachines', () => showShop(shops)),
    command('borewright.openShop', openShop),
    command('borewright.openJobOfShop', (given: unknown) => openJobOfShop(ask, given)),
    command('borewright.newJob', () => newFile('job', ask)),
    command('borewright.newShop', () => newFile('shop', ask)),
  ];
}

/** The file that a command is given, as by a lens or from the list of files; null where it is given none. */
function uriOf(given: unknown): string | null {
  return typeof given === 'string' ? given : given instanceof vscode.Uri ? given.toString() : null;
}

interface AllPanels {
  readonly previews: ReturnType<typeof previewPanels>;
  readonly boxes: ReturnType<typeof boxPanels>;
  readonly machines: ReturnType<typeof machinePanels>;
  readonly shops: ReturnType<typeof shopPanels>;
}

/** Stops the server with the window. */
export function stop(): Thenable<void> | undefined {
  return client?.isRunning() === true ? client.stop() : undefined;
}

/** A command that is given a file, as from the list of files, is about that one. */
async function shown(given: unknown): Promise<void> {
  if (given instanceof vscode.Uri) await vscode.window.showTextDocument(given);
}

function isOfFile(said: unknown): said is object & { readonly uri: string } {
  return typeof said === 'object' && said !== null && 'uri' in said && typeof said.uri === 'string';
}

function versionOf(said: object): number | null {
  return 'version' in said && typeof said.version === 'number' ? said.version : null;
}

/** What becomes of a drawing, by command. */
const PICTURES: Readonly<Record<string, PictureUse>> = {
  'borewright.copyPicture': 'copy',
  'borewright.saveSvg': 'svg',
  'borewright.savePng': 'png',
  'borewright.printDrawing': 'print',
};

const PASSED_BY: ReadonlySet<number> = new Set([
  LSPErrorCodes.ContentModified,
  LSPErrorCodes.RequestCancelled,
  LSPErrorCodes.ServerCancelled,
]);

/** Also after the client has given up restarting a server that failed too often. */
async function restart(language: BaseLanguageClient, heard: Heard): Promise<void> {
  try {
    if (language.isRunning()) {
      heard.stops();
      await language.stop();
    }
    await language.start();
    void vscode.window.setStatusBarMessage(say.restarted(), 3000);
  } catch (fault) {
    void vscode.window.showErrorMessage(say.notRestarted(wordsOf(fault)));
  }
}
