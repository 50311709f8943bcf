import { Engine, type JobAnalysis } from '../../../shared-core/engine.js';
import {
  allFindings,
  boxesOf,
  drawingOf,
  explain,
  knownFindings,
  outlineOf,
  type Wishes,
} from '../../../shared-core/service.js';
import { digest, flat, under } from './flat.js';
import { shown } from './shown.js';

const URI = 'file:///job.carcass.yaml';

/** What a text is followed by while somebody edits it: a figure more, a bracket too many, the text as it was, and in part. */
function edits(text: string): readonly (readonly [what: string, text: string])[] {
  const lines = text.split('\n');
  return [
    ['as it is', text],
    ['wider', text.replace(/width: (\d)/, 'width: 1$1')],
    ['with a bracket open', text.replace(/^( +)kind: .*$/m, '$&\n$1note: [')],
    ['with a key too far in', text.replace(/^( +)width: /m, '$1  width: ')],
    ['as it was', text],
    ['with a name taken away', text.replace(/^ {2}[a-z-]+:$/m, '  :')],
    ['with half of it', lines.slice(0, lines.length / 2).join('\n')],
  ];
}

/** What is known of a job at once, by and by, and in the end, edit by edit, and what is drawn of it meanwhile. */
export function followed(text: string, shopOf: (reference: string) => string): readonly string[] {
  const engine = new Engine({
    readShop: (_, reference) => ({ ok: true, uri: `file:///${reference}`, text: shopOf(reference) }),
  });
  return edits(text).flatMap(([what, now]) => {
    const near = engine.near(URI, now, Math.floor(now.length / 2));
    const isReady = engine.prepare(URI, now, 0, () => true);
    const soFar = engine.soFar(URI, now);
    const job = engine.analyse(URI, now);
    const file = { kind: 'job', analysis: job } as const;
    return under(`${what}: ${engine.computed} made, ready ${isReady}`, [
      ...[near, soFar, job].map((one) => saidOf(one)),
      ...new Set(allFindings(file).map(({ rule, carcass, at }) => `${rule} ${carcass ?? '-'} ${flat(at)}`)),
      ...drawnAt(job),
    ]);
  });
}

const saidOf = (analysis: JobAnalysis): string => {
  const found = knownFindings({ kind: 'job', analysis }, 20);
  const names = analysis.carcasses.map(({ name, carcass }) => `${name} ${carcass?.panels.length ?? '-'}`);
  return `${found.length} findings ${digest(found)}; ${names.join(', ')}; ${digest(outlineOf({ kind: 'job', analysis }))}`;
};

/** Which panel is drawn for a cursor at each line, and whether it is that of an older text. */
function drawnAt(job: JobAnalysis): readonly string[] {
  const file = { kind: 'job', analysis: job } as const;
  const document = shown(job);
  const at = { uri: job.uri, position: null, carcass: null };
  const lines = new Set<string>();
  for (const { index } of job.text.matchAll(/\S.*/g)) {
    const reply = drawingOf(file, document, { ...at, panel: 'bottom', view: 'panel' }, index);
    const box = boxesOf(file, document, { ...at, what: 'carcass' }, index);
    const drawn = reply.kind === 'drawing' ? [reply.carcass, reply.panel, reply.stale] : [reply.reason];
    lines.add(flat([...drawn, box.kind === 'box' ? [box.carcass, box.stale, box.boxes.length] : box.reason]));
  }
  return [...lines];
}

/** A reader who wants lengths in the other unit, one finding louder, and one not at all. */
const WISHES: Wishes = {
  lengths: { unit: 'in', inches: 'decimals', comma: true },
  findings: new Map([
    ['joint-not-held', 'error'],
    ['clamp-misses-panel', null],
    ['misfit-past-limit', 'info'],
  ]),
};

/** What such a reader is told of a job. */
export function wished(text: string, shopOf: (reference: string) => string): readonly string[] {
  const engine = new Engine({
    readShop: (_, reference) => ({ ok: true, uri: `file:///${reference}`, text: shopOf(reference) }),
  });
  engine.wishes = WISHES;
  const file = { kind: 'job', analysis: engine.analyse(URI, text) } as const;
  const hovers = [...text.matchAll(/[\w.-]+/g)].map(({ index }) => explain(file, index)?.words ?? '-');
  return [...allFindings(file).map(flat), ...new Set(hovers)].map((line) => line.replaceAll('\n', '⏎'));
}
