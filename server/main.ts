import { startServer } from './node.js';

// What the editor's client starts.
startServer();
