import { boresConcerned, type Finding, type Repair } from './finding.js';
import type { CarcassContext, Trial } from './rule.js';
import { identityOf } from '../words/message.js';

/**
 * Leaves out repairs that do not do what they promise: after one, there must be fewer findings of its rule, its own must be
 * gone, and no other rule may have more to say: no more findings, none about bores that it found nothing wrong with, and,
 * of what is about no bore, nothing that it did not say before.
 * `hiding` are the rules whose faults hide others: what they bring to light is not of the repair's making. Without a `retry`
 * every candidate stays, and so does a change outside the carcass's own text. A repair is tried when it is first looked at,
 * so that what nobody asks for costs nothing while one types; the slow rules are asked only where the quick ones agree.
 */
export function workingRepairs(
  found: readonly Finding[],
  { retry, boring }: Pick<CarcassContext, 'retry' | 'boring'>,
  hiding: ReadonlySet<string>,
  slow: ReadonlySet<string>,
): readonly Finding[] {
  if (retry === undefined) return found;
  let start: Trial | undefined;
  let bored: ReadonlySet<string> | undefined;
  const works = (finding: Finding, repair: Repair): boolean => {
    if (repair.changes.some((change) => change.part !== 'self')) return true;
    start ??= once(retry([]) ?? { quick: found, all: () => found });
    bored ??= new Set(boring.bores.map(({ id }) => id));
    const after = retry(repair.changes);
    if (after === null) return false;
    const hides = hiding.has(finding.rule);
    if (!slow.has(finding.rule) && !improves(start.quick, after.quick, finding, hides, bored)) return false;
    return improves(start.all(), after.all(), finding, hides, bored);
  };
  return found.map((finding) => {
    const { repairs: candidates, ...rest } = finding;
    if (candidates.length === 0) return finding;
    let tried: readonly Repair[] | undefined;
    return {
      ...rest,
      get repairs(): readonly Repair[] {
        return (tried ??= candidates.filter((repair) => works(finding, repair)));
      },
    };
  });
}

function once({ quick, all }: Trial): Trial {
  let kept: readonly Finding[] | undefined;
  return { quick, all: () => (kept ??= all()) };
}

function improves(
  before: readonly Finding[],
  after: readonly Finding[],
  finding: Finding,
  hides: boolean,
  bored: ReadonlySet<string>,
): boolean {
  const [was, is] = [byRule(before), byRule(after)];
  const count = (rules: ByRule, rule: string): number => rules.get(rule)?.findings ?? 0;
  if (count(is, finding.rule) >= count(was, finding.rule)) return false;
  if (timesSaid(after, finding) >= timesSaid(before, finding)) return false;
  if (hides) return true;
  // A bore that is new may share a fault that others had before; one that was there and was sound must stay so.
  const spoilt = (rule: string, bore: string): boolean => bored.has(bore) && was.get(rule)?.bores.has(bore) !== true;
  // Faults of one cause are told in one finding: that another joint has lost its bores shows in its words alone.
  const said = new Set(before.map(({ rule, message }) => `${rule} ${identityOf(message)}`));
  const isNews = (one: Finding): boolean =>
    one.rule !== finding.rule &&
    boresConcerned(one).length === 0 &&
    !said.has(`${one.rule} ${identityOf(one.message)}`);
  return (
    !after.some(isNews) &&
    [...is].every(
      ([rule, told]) => told.findings <= count(was, rule) && ![...told.bores].some((bore) => spoilt(rule, bore)),
    )
  );
}

/** Two findings are one where they say the same. */
function timesSaid(findings: readonly Finding[], { rule, message }: Finding): number {
  const said = identityOf(message);
  return findings.filter((one) => one.rule === rule && identityOf(one.message) === said).length;
}

interface Told {
  findings: number;
  readonly bores: Set<string>;
}
type ByRule = ReadonlyMap<string, Told>;

function byRule(findings: readonly Finding[]): ByRule {
  const rules = new Map<string, Told>();
  for (const finding of findings) {
    const told = rules.get(finding.rule) ?? { findings: 0, bores: new Set() };
    told.findings += 1;
    boresConcerned(finding).forEach((bore) => told.bores.add(bore));
    rules.set(finding.rule, told);
  }
  return rules;
}
