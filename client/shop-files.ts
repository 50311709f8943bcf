import * as vscode from 'vscode';
import { NAMES, say } from './messages.js';

/** The jobs that name a shop file. */
const JOBS_OF = 'borewright/jobsOf';

type Ask = (method: string, params: object) => Promise<unknown>;

/** Opens the shop file of the job that is being edited. */
export async function openShop(): Promise<void> {
  const document = vscode.window.activeTextEditor?.document;
  const links =
    document === undefined
      ? []
      : await vscode.commands.executeCommand<vscode.DocumentLink[]>('vscode.executeLinkProvider', document.uri);
  const target = links.find(({ target: one }) => one !== undefined && /\.shop\.ya?ml$/i.test(one.path))?.target;
  if (target === undefined) {
    void vscode.window.showInformationMessage(say.noShop());
    return;
  }
  await vscode.window.showTextDocument(target);
}

/** Opens one of the jobs that name the shop file: the one given, or the one that is being edited. */
export async function openJobOfShop(ask: Ask, given: unknown): Promise<void> {
  const uri = given instanceof vscode.Uri ? given : vscode.window.activeTextEditor?.document.uri;
  const answer = uri === undefined ? [] : await ask(JOBS_OF, { uri: uri.toString() });
  const jobs = (Array.isArray(answer) ? answer : [])
    .filter((one): one is string => typeof one === 'string')
    .map((one) => vscode.Uri.parse(one));
  const [first] = jobs;
  if (first === undefined) {
    void vscode.window.showInformationMessage(say.noJobOfShop());
    return;
  }
  const picked =
    jobs.length === 1
      ? first
      : (
          await vscode.window.showQuickPick(
            jobs.map((job) => ({ label: vscode.workspace.asRelativePath(job), job })),
            { placeHolder: NAMES.jobsOfShop },
          )
        )?.job;
  if (picked !== undefined) await vscode.window.showTextDocument(picked);
}
