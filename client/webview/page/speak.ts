import { speak, type Spoken } from '../../../shared-core/words/spoken.js';

// To be imported first: what the core says is told in the words that a script before this one has brought, else in English.
speak((globalThis as { readonly borewrightWords?: Spoken }).borewrightWords ?? null);
