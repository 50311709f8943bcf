// The tests of a run, as suites register them; what becomes of the outcomes is another matter.
import { SPOKEN } from './driver-protocol.js';

interface Registered {
  readonly name: string;
  readonly body: () => Promise<void> | void;
}
export interface Outcome {
  readonly name: string;
  readonly status: 'passed' | 'failed';
  readonly ms: number;
  readonly error?: string;
}

const TEST_LIMIT_MS = 120_000;
const registered: Registered[] = [];
let prefix = '';

/** Names a group of tests. */
export function suite(name: string, body: () => void): void {
  const outer = prefix;
  prefix = `${prefix}${name} > `;
  body();
  prefix = outer;
}

/** Registers one test. Tests of one run share the window, so each opens what it needs. */
export function test(name: string, body: () => Promise<void> | void): void {
  registered.push({ name: prefix + name, body });
}

/** Says something to whoever watches the run; a plain console.log is lost in the editor's own log. */
function say(text: string): void {
  console.log(text.replace(/^/gm, SPOKEN));
}

async function runOne({ name, body }: Registered): Promise<Outcome> {
  const start = Date.now();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, fail) => {
    timer = setTimeout(() => fail(new Error(`took longer than ${TEST_LIMIT_MS} ms`)), TEST_LIMIT_MS);
  });
  try {
    await Promise.race([Promise.resolve().then(body), limit]);
    return { name, status: 'passed', ms: Date.now() - start };
  } catch (error) {
    const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { name, status: 'failed', ms: Date.now() - start, error: text };
  } finally {
    clearTimeout(timer);
  }
}

/** Runs the registered tests in order, those whose name has `only` where that is given. */
export async function runAll(only: string | undefined): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = [];
  for (const one of registered.filter(({ name }) => only === undefined || name.includes(only))) {
    const outcome = await runOne(one);
    outcomes.push(outcome);
    say(`${outcome.status === 'passed' ? 'ok  ' : 'FAIL'} ${outcome.name} (${outcome.ms} ms)`);
    if (outcome.error !== undefined) say(outcome.error.replace(/^/gm, '       '));
  }
  return outcomes;
}

/** Throws where one failed or none ran, so that the editor exits with an error. */
export function expectAll(outcomes: readonly Outcome[]): void {
  const failed = outcomes.filter(({ status }) => status === 'failed').length;
  if (outcomes.length === 0) throw new Error('no editor test was found');
  if (failed > 0) throw new Error(`${failed} of ${outcomes.length} editor tests failed`);
}
