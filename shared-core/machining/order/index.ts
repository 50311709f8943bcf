export { orderByChangeover, type ChangeoverOrder } from './order-by-changeover.js';
export { LARGEST_COST, type OrderOptions, type OrderProblem } from './request.js';
export { LARGEST_TABLE, orderInWindows } from './windows.js';
export { orderWithState, type StatefulOrder, type StatefulSequence } from './with-state.js';
