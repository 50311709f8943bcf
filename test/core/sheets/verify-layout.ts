import type { Corner, CuttingPlan, CuttingProblem, Part, Size } from '../../../shared-core/sheets/model.js';

interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
const rect = (at: Corner, size: Size): Rect => ({ x0: at.x, y0: at.y, x1: at.x + size.length, y1: at.y + size.width });

/**
 * What is wrong with a plan, by the rules of a panel saw alone: it knows neither strips nor stacks, only rectangles and the
 * cuts that part them. Empty where the plan can be sawn as it stands.
 */
export function faultsOf(problem: CuttingProblem, plan: CuttingPlan): readonly string[] {
  const faults: string[] = [];
  const made = new Map<string, number>();
  const used = new Map<string, number>();
  let cost = 0;
  for (const [n, { stock: name, part }] of plan.sheets.entries()) {
    const stock = problem.stocks.find((each) => each.name === name);
    if (stock === undefined) return [`sheet ${n} is of no stock`];
    used.set(name, (used.get(name) ?? 0) + 1);
    cost += stock.price;
    const { trim } = problem.saw;
    const whole = rect({ x: trim, y: trim }, { length: stock.length - 2 * trim, width: stock.width - 2 * trim });
    if (JSON.stringify(rect(part.at, part.size)) !== JSON.stringify(whole))
      faults.push(`sheet ${n} is not cut from its edges`);
    faults.push(...faultsIn(problem, part, 1).map((fault) => `sheet ${n}: ${fault}`));
    const pieces = leaves(part).filter((leaf) => leaf.kind === 'piece');
    for (const piece of pieces) made.set(piece.piece, (made.get(piece.piece) ?? 0) + 1);
    pieces.forEach((a, i) =>
      pieces.slice(i + 1).forEach((b) => {
        const [p, q] = [rect(a.at, a.size), rect(b.at, b.size)];
        const { kerf } = problem.saw;
        if (p.x0 < q.x1 + kerf && q.x0 < p.x1 + kerf && p.y0 < q.y1 + kerf && q.y0 < p.y1 + kerf)
          faults.push(`sheet ${n}: ${a.piece} and ${b.piece} are nearer than a cut`);
      }),
    );
  }
  const lacking = new Map(plan.lacking.map(({ piece, count }) => [piece, count]));
  for (const { id, count } of problem.pieces) {
    const wanted = count - (lacking.get(id) ?? 0);
    if (!plan.misfits.includes(id) && (made.get(id) ?? 0) !== wanted)
      faults.push(`${id} is cut ${made.get(id) ?? 0} times, not ${wanted}`);
  }
  for (const { name, count } of problem.stocks)
    if (count !== null && (used.get(name) ?? 0) > count) faults.push(`more of ${name} than there are`);
  if (cost !== plan.cost) faults.push(`the sheets cost ${cost}, not ${plan.cost}`);
  if (plan.bound > plan.cost) faults.push('the bound is over the cost');
  return faults;
}

function leaves(part: Part): Exclude<Part, { kind: 'cut' }>[] {
  return part.kind === 'cut' ? part.parts.flatMap(leaves) : [part];
}

/** Every cut runs from edge to edge of what it cuts, a kerf wide, and turns no deeper than the saw's stages. */
function faultsIn(problem: CuttingProblem, part: Part, stage: number): string[] {
  const { saw } = problem;
  if (part.kind === 'offcut') return [];
  if (part.kind === 'piece') {
    const piece = problem.pieces.find(({ id }) => id === part.piece)!;
    const [length, width] = part.turned ? [piece.width, piece.length] : [piece.length, piece.width];
    if (part.turned && !piece.turns) return [`${part.piece} is turned`];
    return part.size.length === length && part.size.width === width ? [] : [`${part.piece} has another size`];
  }
  const faults: string[] = [];
  const across = part.cuts === 'across';
  const parts = part.parts;
  const extent = (size: Size): number => (across ? size.length : size.width);
  const other = (size: Size): number => (across ? size.width : size.length);
  const start = (at: Corner): number => (across ? at.x : at.y);
  const isSawn = parts.length > 1 || parts.some(({ size }) => extent(size) !== extent(part.size));
  if (isSawn && stage > saw.stages) faults.push(`a cut of stage ${stage}`);
  let from = start(part.at);
  for (const each of parts) {
    if (start(each.at) !== from) faults.push('two parts are not a cut apart');
    if (other(each.size) !== other(part.size)) faults.push('a cut does not run from edge to edge');
    const limit = stage === 1 ? saw.rip : stage === 2 ? saw.crosscut : null;
    if (each.kind !== 'offcut' && limit !== null && extent(each.size) > limit)
      faults.push(`a cut of stage ${stage} past the saw`);
    from += extent(each.size) + saw.kerf;
    faults.push(...faultsIn(problem, each, stage + 1));
  }
  if (from - saw.kerf > start(part.at) + extent(part.size)) faults.push('parts stick out of what they are cut from');
  return faults;
}
