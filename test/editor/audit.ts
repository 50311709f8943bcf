// What axe-core finds wrong with a page, for readers who see little, hear it, or have no pointer.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { evaluateSourceInWebview } from './driver.js';

interface Violation {
  readonly id: string;
  readonly help: string;
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[];
}

/** Every violation of axe-core's rules on the page that has `selector`, a line each; none where there is none. */
export async function violations(selector: string): Promise<readonly string[]> {
  const axe = readFileSync(
    join(process.env.BOREWRIGHT_EDITOR_REPOSITORY!, 'node_modules', 'axe-core', 'axe.min.js'),
    'utf8',
  );
  const run = `() => { if (!window.axe) { ${axe} } return window.axe.run(document, { resultTypes: ['violations'] }).then(({ violations }) => violations); }`;
  const found = (await evaluateSourceInWebview(selector, run)) as readonly Violation[];
  return found.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} (${help}) at ${target.join(' ')}: ${failureSummary}`),
  );
}
