import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import * as german from '../../../client/webview/machine/messages.de.js';
import * as english from '../../../client/webview/machine/messages.en.js';
import * as germanPreview from '../../../client/webview/preview/messages.de.js';
import * as englishPreview from '../../../client/webview/preview/messages.en.js';
import { violations } from '../audit.js';
import { evaluateInWebview, openFile, screenshot, until } from '../driver.js';
import { suite, test } from '../harness.js';
import { closePreview, DRAWING, JOB, preview, shows } from '../preview-page.js';

/** All words of a page, of its hints and of what is read out. */
function wordsOfPage(): { readonly language: string; readonly words: readonly string[] } {
  const all = [...document.querySelectorAll<HTMLElement>('body *')];
  const own = all.flatMap((one) => [
    one.childElementCount === 0 ? (one.textContent ?? '') : '',
    one.getAttribute('title') ?? '',
    one.getAttribute('aria-label') ?? '',
  ]);
  return { language: document.documentElement.lang, words: own.map((words) => words.trim()).filter(Boolean) };
}

/** Nothing that is translated stands there in English, and much of it in German. */
async function speaksGerman(selector: string, de: object, en: object): Promise<void> {
  const { language, words } = await evaluateInWebview(selector, wordsOfPage);
  assert.equal(language, 'de');
  const [ours, theirs] = [Object.values(de) as string[], Object.values(en) as string[]];
  assert.deepEqual(
    words.filter((one) => theirs.includes(one) && !ours.includes(one)),
    [],
  );
  assert.ok(words.filter((one) => ours.includes(one)).length > 8, words.join('\n'));
  // What the core says on it: lettering, figures, cautions.
  const seen = await evaluateInWebview(selector, () => document.body.innerText);
  assert.doesNotMatch(
    seen,
    /\b(?:edge|inside|outside|fence|spindles?|holes?|stroke|isolate|hands|through|deep|keep|from|up|down)\b/i,
  );
  assert.deepEqual(await violations(selector), []);
}

suite('in an editor in German', () => {
  test('the commands, the settings and the walkthrough are in German', () => {
    const extension = vscode.extensions.getExtension('borewright.borewright');
    assert.ok(extension);
    const said = JSON.stringify(extension.packageJSON);
    assert.equal(vscode.env.language, 'de');
    for (const words of ['Bohrbild zeigen', 'Keine Hinweise.', 'Vom leeren Blatt zur gebohrten Platte'])
      assert.ok(said.includes(words), words);
    assert.doesNotMatch(said, /"%[\w.-]+%"/);
  });

  test('the pages are in German', async () => {
    await preview(JOB, 'width: 600\n    fixed');
    await shows('the side', ({ title }) => title === 'right-base, left');
    await speaksGerman(DRAWING, germanPreview.LABELS, englishPreview.LABELS);
    await screenshot('german-preview');
    const editor = await openFile('pantry.carcass.yaml');
    await vscode.commands.executeCommand('borewright.showMachineView', editor.document.uri.toString());
    await until('the first step', () => evaluateInWebview('.set-ups', () => (document.body.dataset.step ?? '') !== ''));
    await speaksGerman('.set-ups', german.LABELS, english.LABELS);
    await screenshot('german-machine');
    await closePreview();
  });
});
