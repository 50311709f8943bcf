export { LARGEST_TABLE, orderInWindows } from './windows.js';
export { orderWithState, type StatefulOrder, type StatefulSequence } from './with-state.js';
