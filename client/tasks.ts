import * as vscode from 'vscode';
import { NAMES, say } from './messages.js';

const TYPE = 'borewright';

/** A task that checks files with the command line of this extension, in this window's own Node. */
export function checkTasks(extension: vscode.Uri): vscode.Disposable {
  const cli = vscode.Uri.joinPath(extension, 'dist', 'server', 'cli.js').fsPath;
  const taskOf = (definition: vscode.TaskDefinition, scope: vscode.WorkspaceFolder): vscode.Task => {
    const given: unknown = definition['path'];
    const path = typeof given === 'string' && given !== '' ? given : '.';
    const run = new vscode.ProcessExecution(process.execPath, [cli, 'check', path], {
      cwd: scope.uri.fsPath,
      // The editor's own program then runs as Node.
      env: { ELECTRON_RUN_AS_NODE: '1' },
    });
    const name = path === '.' ? NAMES.checkAll : say.check(path);
    const task = new vscode.Task(definition, scope, name, TYPE, run, '$borewright');
    task.group = vscode.TaskGroup.Test;
    return task;
  };
  return vscode.tasks.registerTaskProvider(TYPE, {
    provideTasks: () =>
      (vscode.workspace.workspaceFolders ?? [])
        .filter(({ uri }) => uri.scheme === 'file')
        .map((folder) => taskOf({ type: TYPE, path: '.' }, folder)),
    resolveTask: ({ definition, scope }) => {
      const folder = typeof scope === 'object' ? scope : vscode.workspace.workspaceFolders?.[0];
      return folder === undefined ? undefined : taskOf(definition, folder);
    },
  });
}
