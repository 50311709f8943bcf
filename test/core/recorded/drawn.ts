import type { JobAnalysis, ShopAnalysis } from '../../../shared-core/engine.js';
import { toSvg } from '../../../shared-core/drawing/render/svg.js';
import { boxesOf, drawingOf, panelDrawings, pictureOf, shelfMoved, shopView } from '../../../shared-core/service.js';
import { digest, flat, under } from './flat.js';
import { shown } from './shown.js';

const PANES = [undefined, { width: 60, height: 90 }] as const;

/** Bore maps on paper and on screens, and boxes in three dimensions. */
export async function drawn(job: JobAnalysis): Promise<readonly string[]> {
  const file = { kind: 'job', analysis: job } as const;
  const document = shown(job);
  const { uri } = job;
  const at = { uri, position: null };
  const maps = job.carcasses.flatMap(({ name, carcass: box }) => {
    const panels = box?.panels.map(({ key }) => key) ?? [];
    const whole = { ...at, carcass: name, panel: null, view: 'all-panels', medium: 'screen' } as const;
    return under(name, [
      `box ${digest(boxesOf(file, document, { ...at, what: 'carcass', carcass: name }, null))}`,
      `wall ${digest(boxesOf(file, document, { ...at, what: 'wall', carcass: name }, null))}`,
      `all panels ${digest(pictureOf(file, document, whole, null))} ${digest(drawingOf(file, document, whole, null))}`,
      ...panels.map((panel) => {
        const params = { ...at, carcass: name, panel, view: 'panel' } as const;
        const paper = drawingOf(file, document, params, null);
        const screens = PANES.map((pane) =>
          digest(
            drawingOf(
              file,
              document,
              { ...params, medium: 'screen', nearer: pane ? 3 : 1, ...(pane && { pane }) },
              null,
            ),
          ),
        );
        return `${panel} ${paperWords(paper)} ${digest(paper)} ${screens.join(' ')}`;
      }),
      ...panels
        .filter((key) => key.startsWith('loose-'))
        .map((shelf) =>
          flat([1, -2].map((holes) => shelfMoved(file, document, { uri, carcass: name, shelf, holes }).edits)),
        ),
    ]);
  });
  const prints = await Promise.all((['svg', 'dxf'] as const).map((form) => panelDrawings(job, form, () => null)));
  return [...maps, ...prints.map((files) => `files ${files.length} ${digest(files)}`)];
}

function paperWords(reply: ReturnType<typeof drawingOf>): string {
  if (reply.kind === 'nothing') return reply.reason;
  const { scene } = reply;
  const { scale, frame, facts, table, shapes } = scene;
  const said = facts.map(({ word, value }) => `${word} ${value}`).join(', ');
  return `1:${scale} ${flat(frame)} ${shapes.length} shapes, ${table.length} lines; ${said}; SVG ${digest(toSvg(scene))}`;
}

/** The machines of a shop as their operators see them. */
export function drawnShop(shop: ShopAnalysis): readonly string[] {
  const of = { kind: 'shop', analysis: shop } as const;
  return [undefined, 70].flatMap((width) => {
    const view = shopView(of, shown(shop), { uri: shop.uri, ...(width !== undefined && { width }) });
    if (view.kind === 'nothing') return [view.reason];
    return [
      `${view.title} ${digest(view.ranges)}`,
      ...view.machines.map(({ name, kindWords, facts, scene, trouble, source }) =>
        width === undefined
          ? `${name} (${kindWords}) ${flat(facts)} ${trouble ?? '-'} ${source} ${flat(scene?.described ?? '-')} ${digest(scene)}`
          : `${name} ${digest(scene)}`,
      ),
    ];
  });
}
