import { findingTotals } from '../../shared-core/service.js';
import { tell } from '../../shared-core/words/message.js';
import { checkFiles } from './check-files.js';
import { expandAll } from './files.js';
import { findingLine, type ShownFinding } from './found.js';
import { say } from './messages.js';
import type { Outcome } from './run.js';
import { asJson, CouldNotRun, readArguments, readFormat } from './run.js';

interface ShownFile {
  readonly file: string;
  readonly findings: readonly ShownFinding[];
}

/** `borewright check PATH... [--format text|json]` */
export async function check(args: readonly string[]): Promise<Outcome> {
  const { options, rest } = readArguments(args, ['format']);
  const format = readFormat(options.format);
  if (rest.length === 0) throw new CouldNotRun(say.jobOrFolder());
  const { paths, missing: absent } = expandAll(rest);
  const checked = await checkFiles(paths);
  const files = checked.flatMap((one, index): readonly ShownFile[] =>
    'findings' in one ? [{ file: paths[index]!, findings: one.findings }] : [],
  );
  const missing = [...absent, ...checked.flatMap((one) => ('missing' in one ? [one.missing] : []))];
  const all = files.flatMap(({ findings }) => findings);
  const errors = all.some(({ severity }) => severity === 'error');
  return {
    // Where nothing was found there is nothing to sum up.
    output: files.length === 0 ? '' : format === 'json' ? asJson({ files }) : asText(files),
    errors: missing.map((why) => `${tell(say.refused({ why }), 'mm')}\n`).join(''),
    code: missing.length > 0 ? 2 : errors ? 1 : 0,
  };
}

function asText(files: readonly ShownFile[]): string {
  const lines = files.flatMap(({ file, findings }) => findings.map((finding) => findingLine(file, finding)));
  const all = files.flatMap(({ findings }) => findings);
  return [...lines, findingTotals(files.length, all), ''].join('\n');
}
