import { boreMapScene } from '../drawing/bore-map/bore-map.js';
import type { FaceCutter } from '../drawing/render/embedded-face.js';
import { toSvg } from '../drawing/render/svg.js';
import type { Scene } from '../drawing/scene/scene.js';
import type { JobAnalysis } from '../engine.js';
import { wantedOf } from '../findings/wanted.js';
import { boreMapsPaper } from '../papers/bore-maps/paper.js';
import type { Told } from '../words/told.js';
import { asHtml } from '../papers/render/html.js';

/** The bore maps of a carcass, panel by panel. */
export interface MappedCarcass {
  readonly name: string;
  readonly panels: readonly { readonly key: string; readonly scene: Scene }[];
}

/** The bore maps of every carcass of a job; none of one that cannot be worked out. */
export function mapsOf({ carcasses, reader, wishes }: JobAnalysis): readonly MappedCarcass[] {
  return carcasses.map(({ name, spec, carcass, boring, findings }): MappedCarcass => {
    if (carcass === null || boring === null) return { name, panels: [] };
    const drawn = {
      name,
      carcass,
      boring,
      findings: wantedOf(findings, wishes.findings),
      note: spec?.note ?? '',
      reader,
    };
    const panels = carcass.panels.flatMap(({ key }) => {
      const scene = boreMapScene(drawn, key);
      return scene === null ? [] : [{ key, scene }];
    });
    return { name, panels };
  });
}

/** The bore maps of a job as SVG, and one page of HTML that shows them all from their files. */
export interface MapsToLookAt {
  readonly page: string;
  readonly drawings: readonly { readonly file: string; readonly svg: string }[];
}

/**
 * @param job how the page calls the job
 * @param findings one line each
 * @param fileOf the name of the file that a panel's drawing will have; asked once for each, in the order of the page
 * @param face brings the lettering of each drawing along
 */
export function mapsToLookAt(
  analysis: JobAnalysis,
  job: string,
  findings: readonly Told[],
  fileOf: (carcass: string, panel: string) => string,
  face: FaceCutter | null = null,
): MapsToLookAt {
  const carcasses = mapsOf(analysis).map(({ name, panels }) => ({
    name,
    panels: panels.map(({ key, scene }) => ({ name: key, file: fileOf(name, key), scene })),
  }));
  return {
    page: asHtml(boreMapsPaper([{ file: job, findings, carcasses }])),
    drawings: carcasses.flatMap(({ panels }) =>
      panels.map(({ file, scene }) => ({ file, svg: toSvg(scene, { face }) })),
    ),
  };
}
