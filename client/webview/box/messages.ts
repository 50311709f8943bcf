import { spoken } from '../../../shared-core/words/language.js';
import { LANGUAGE } from '../page/language.js';
import * as german from './messages.de.js';
import * as english from './messages.en.js';
import * as french from './messages.fr.js';

/** What the page of the box view has. */
export const LABELS = spoken(LANGUAGE, english.LABELS, { de: german.LABELS, fr: french.LABELS });
export const PHRASES = spoken(LANGUAGE, english.PHRASES, { de: german.PHRASES, fr: french.PHRASES });
