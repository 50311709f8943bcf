export { orderByChangeover, type ChangeoverOrder } from './order-by-changeover.js';
export { LARGEST_COST, MOST_SET_UPS, type OrderOptions, type OrderProblem } from './request.js';
