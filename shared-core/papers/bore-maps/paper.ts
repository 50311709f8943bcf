import { describe } from '../../drawing/bore-map/hole-table.js';
import type { Scene } from '../../drawing/scene/scene.js';
import { inShort } from '../../machining/caution.js';
import { asItIs, type Told } from '../../words/told.js';
import { WORDS } from './messages.js';
import { heading, list, paragraph, type Block, type Paper, type Picture } from '../paper.js';

/** A drawing and the file that it is written to. */
export interface DrawnPanel {
  readonly name: string;
  readonly file: string;
  readonly scene: Scene;
}
export interface DrawnJob {
  readonly file: string;
  /** One line each. */
  readonly findings: readonly Told[];
  readonly carcasses: readonly { readonly name: string; readonly panels: readonly DrawnPanel[] }[];
}

/** The bore maps of all panels, job by job. */
export function boreMapsPaper(jobs: readonly DrawnJob[]): Paper {
  return { title: WORDS.title, blocks: [{ kind: 'cautions', items: [inShort()] }, ...jobs.flatMap(jobBlocks)] };
}

function jobBlocks({ file, findings, carcasses }: DrawnJob): readonly Block[] {
  return [
    heading(1, asItIs(file)),
    ...(findings.length === 0 ? [paragraph(WORDS.noFindings)] : list(findings)),
    ...carcasses.flatMap(({ name, panels }) => [heading(2, asItIs(name)), ...panels.map(picture)]),
  ];
}

function picture({ name, file, scene }: DrawnPanel): Picture {
  return { kind: 'picture', name: asItIs(name), about: describe(scene), scene, file };
}
