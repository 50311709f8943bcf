import { planStrokes, type StrokePlan, type StrokeProblem, type StrokeRequest } from '../strokes/index.js';

const KEPT = 512;
const known = new Map<string, StrokePlan | StrokeProblem>();

/** `planStrokes`, remembering its last answers: the panels of a job share few rows, and a long row takes milliseconds. */
export function strokesFor(request: StrokeRequest): StrokePlan | StrokeProblem {
  const key = JSON.stringify(request);
  const before = known.get(key);
  if (before) return before;
  const plan = planStrokes(request);
  const oldest = known.size >= KEPT ? known.keys().next() : null;
  if (oldest && !oldest.done) known.delete(oldest.value);
  known.set(key, plan);
  return plan;
}
