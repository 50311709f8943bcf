import { fr } from '../../../shared-core/spoken/fr.js';

// What the core says in this language, for the script of the page that comes after.
Object.assign(globalThis, { borewrightWords: fr });
