import * as vscode from 'vscode';
import { languageOf } from '../shared-core/words/language.js';

/** The language of the editor, where the extension speaks it. */
export const LANGUAGE = languageOf(vscode.env.language);
