import { IN_SHORT } from '../../shared-core/machining/caution.js';
import { describe } from '../../shared-core/drawing/bore-map/hole-table.js';
import type { Scene } from '../../shared-core/drawing/scene/scene.js';

/** A drawing and the file that it was written to, from the page's folder. */
export interface DrawnPanel {
  readonly name: string;
  readonly file: string;
  readonly scene: Scene;
}
export interface DrawnJob {
  readonly file: string;
  /** One line each. */
  readonly findings: readonly string[];
  readonly carcasses: readonly { readonly name: string; readonly panels: readonly DrawnPanel[] }[];
}

/** One page with the drawings of all panels, job by job; a plain file, without scripts. */
export function page(jobs: readonly DrawnJob[]): string {
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Bore maps</title>
<style>
  body { font: 16px/1.5 system-ui, sans-serif; margin: 2rem auto; max-width: 80rem; padding: 0 1rem; color: #1b1b1b; background: #fff; }
  .panels { display: grid; grid-template-columns: repeat(auto-fill, minmax(20rem, 1fr)); gap: 1rem; }
  figure { margin: 0; border: 1px solid #bbb; padding: .5rem; }
  img { width: 100%; height: 20rem; object-fit: contain; }
  .caution { border: 2px solid #8a5a00; padding: .5rem 1rem; }
</style>
<h1>Bore maps</h1>
<p class="caution">${escaped(IN_SHORT)}</p>
${jobs.map(section).join('\n')}
</html>
`;
}

function section({ file, findings, carcasses }: DrawnJob): string {
  const found =
    findings.length === 0
      ? '<p>No findings.</p>'
      : `<ul>\n${findings.map((line) => `<li>${escaped(line)}</li>`).join('\n')}\n</ul>`;
  return [`<h2>${escaped(file)}</h2>`, found, ...carcasses.map(carcassSection)].join('\n');
}

function carcassSection({ name, panels }: DrawnJob['carcasses'][number]): string {
  const figures = panels.map(({ name: panel, file, scene }) => {
    const link = escaped(file.split('/').map(encodeURIComponent).join('/'));
    return `<figure><a href="${link}"><img loading="lazy" src="${link}" alt="${escaped(describe(scene))}"></a><figcaption>${escaped(panel)}</figcaption></figure>`;
  });
  return `<h3>${escaped(name)}</h3>\n<div class="panels">\n${figures.join('\n')}\n</div>`;
}

const SIGNS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => SIGNS[sign]!);
}
