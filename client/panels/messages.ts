import { spoken } from '../../shared-core/words/language.js';
import { LANGUAGE } from '../spoken.js';
import * as german from './messages.de.js';
import * as english from './messages.en.js';
import * as french from './messages.fr.js';

/** What the panels are called. */
export const TITLES = spoken(LANGUAGE, english.TITLES, { de: german.TITLES, fr: french.TITLES });
/** What is said of a panel outside its page. */
export const say = spoken(LANGUAGE, english.say, { de: german.say, fr: french.say });
