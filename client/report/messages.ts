import { spoken } from '../../shared-core/words/language.js';
import { LANGUAGE } from '../spoken.js';
import * as german from './messages.de.js';
import * as english from './messages.en.js';
import * as french from './messages.fr.js';

export const NAMES = spoken(LANGUAGE, english.NAMES, { de: german.NAMES, fr: french.NAMES });
export const say = spoken(LANGUAGE, english.say, { de: german.say, fr: french.say });
