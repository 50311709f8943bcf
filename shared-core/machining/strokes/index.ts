export { planStrokes, type Stroke, type StrokePlan } from './plan.js';
export { LONGEST_ROW, MOST_HOLES, MOST_SPINDLES, type StrokeProblem, type StrokeRequest } from './request.js';
