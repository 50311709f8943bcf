import { languageOf } from '../../../shared-core/words/language.js';

/** The language of the page, as the extension has written it at its head. */
export const LANGUAGE = languageOf(globalThis.document?.documentElement.lang);
