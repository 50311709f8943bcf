import { TextDocument } from 'vscode-languageserver-textdocument';
import type { FileReading, Files } from '../../../server/files.js';
import { say } from '../../../server/messages.js';
import { Workspace } from '../../../server/workspace.js';
import type { Finding } from '../../../shared-core/findings/finding.js';
import { tell } from '../../../shared-core/words/message.js';

/** Has the server tell what it has to say itself. */
export function sayServer(sayFinding: (finding: Finding) => void): void {
  const files = (reading: FileReading, beside: readonly string[] = []): Files => ({
    read: () => reading,
    beside: () => beside,
    within: () => [],
    real: (uri: string) => uri,
  });
  const told = (uri: string, shop: string, around: Files): void => {
    const workspace = new Workspace(around);
    const job = `shop: ${shop}\ncarcasses:\n  sink: { kind: base, width: 600 }\n`;
    workspace.open(TextDocument.create(uri, 'borewright-job', 1, job));
    for (const { finding } of workspace.job(uri)?.analysis.findings() ?? []) sayFinding(finding);
  };
  const saved = 'file:///jobs/kitchen.carcass.yaml';
  told('untitled:kitchen.carcass.yaml', 'yard.shop.yaml', files({ ok: false, fault: 'missing' }));
  told(saved, 'yard.txt', files({ ok: false, fault: 'missing' }));
  told(saved, 'yrad.shop.yaml', files({ ok: false, fault: 'missing' }, ['file:///jobs/yard.shop.yaml']));
  told(saved, 'yard.shop.yaml', files({ ok: true, text: 'unit: yards\n' }));
  told(saved, 'yard.shop.yaml', files({ ok: true, text: 'habits: { pitch: wide }\n' }));
  // Said by the watcher, which has no file at hand.
  tell(say.stopped({ seconds: 10 }), 'mm');
  tell(say.startedAnew(), 'mm');
  tell(say.notInitialized(), 'mm');
  tell(say.initializedTwice(), 'mm');
  tell(say.shutDown(), 'mm');
  tell(say.paramsMissing({ method: 'textDocument/hover' }), 'mm');
  tell(say.checkingFiles(), 'mm');
  tell(say.noCode(), 'mm');
  tell(say.noCodedJob({ file: 'kitchen.carcass.yaml', near: null }), 'mm');
  tell(say.noCodedPanel({ file: 'kitchen.carcass.yaml', carcass: 'sink', panel: 'divider-1' }), 'mm');
  tell(say.inReference(), 'mm');
  tell(say.writePapers(), 'mm');
  tell(say.createShop({ reference: 'yard.shop.yaml' }), 'mm');
}
