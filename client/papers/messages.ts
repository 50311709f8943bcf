import { spoken } from '../../shared-core/words/language.js';
import { LANGUAGE } from '../spoken.js';
import * as german from './messages.de.js';
import * as english from './messages.en.js';
import * as french from './messages.fr.js';

/** Every paper, to choose from. */
export const PAPERS = spoken(LANGUAGE, english.PAPERS, { de: german.PAPERS, fr: french.PAPERS });
/** What is asked for before papers are written or a panel is found. */
export const LABELS = spoken(LANGUAGE, english.LABELS, { de: german.LABELS, fr: french.LABELS });
/** What is said of papers and scanned codes. */
export const say = spoken(LANGUAGE, english.say, { de: german.say, fr: french.say });
