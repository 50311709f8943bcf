import type { PictureParams, PictureReply } from '../drawing/messages/picture.js';
import type { FaceCutter } from '../drawing/render/embedded-face.js';
import { toSvg } from '../drawing/render/svg.js';
import { drawingOf, type DrawnDocument } from './drawing.js';
import type { AnalysedFile } from './file.js';

/** The drawing that the preview shows, on paper and to scale, with its hole table, and its lettering where `face` brings it along. */
export function pictureOf(
  file: AnalysedFile,
  document: DrawnDocument,
  params: PictureParams,
  face: FaceCutter | null,
): PictureReply {
  const { uri } = document;
  const reply = drawingOf(file, document, { ...params, position: null, medium: 'paper' }, null);
  if (reply.kind === 'nothing') return { kind: 'nothing', uri, reason: reply.reason };
  const { carcass, scene } = reply;
  const name = fileSafe(`${carcass}-${scene.panel ?? 'all-panels'}`);
  return { kind: 'picture', uri, name, svg: toSvg(scene, { face }) };
}

/** Names of carcasses may have letters that names of files may not have on some platform. */
function fileSafe(name: string): string {
  return name.replace(/[\s\\/:*?"<>|\u0000-\u001f]+/g, '-');
}
