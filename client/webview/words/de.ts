import { de } from '../../../shared-core/spoken/de.js';

// What the core says in this language, for the script of the page that comes after.
Object.assign(globalThis, { borewrightWords: de });
