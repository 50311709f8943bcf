import { spoken } from '../../shared-core/words/language.js';
import { PAPER_TITLES as germanTitles } from '../../shared-core/words/paper-titles/de.js';
import { PAPER_TITLES as titles } from '../../shared-core/words/paper-titles/en.js';
import { PAPER_TITLES as frenchTitles } from '../../shared-core/words/paper-titles/fr.js';
import { LANGUAGE } from '../spoken.js';
import * as german from './messages.de.js';
import * as english from './messages.en.js';
import * as french from './messages.fr.js';

/** Every paper, to choose from. */
export const PAPERS = spoken(LANGUAGE, titles, { de: germanTitles, fr: frenchTitles });
/** What is asked for before papers are written or a panel is found. */
export const LABELS = spoken(LANGUAGE, english.LABELS, { de: german.LABELS, fr: french.LABELS });
/** What is said of papers and scanned codes. */
export const say = spoken(LANGUAGE, english.say, { de: german.say, fr: french.say });
