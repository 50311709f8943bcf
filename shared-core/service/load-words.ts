import type { Path } from '../document/place.js';
import type { CarcassAnalysis, JobAnalysis } from '../engine.js';
import { say } from '../loads/messages.js';
import { loadIn, sagsOf } from '../loads/shelf.js';
import { weightOf, weightOfAll } from '../loads/weight.js';
import { tell } from '../words/message.js';

/** What a carcass and its doors weigh; of its load, how far each shelf sags. '' where a path is about neither. */
export function loadWords({ shop, reader }: JobAnalysis, { spec, carcass }: CarcassAnalysis, path: Path): string {
  if (spec === null || carcass === null) return '';
  if (path.length === 0) {
    const doors = carcass.panels.filter(({ role }) => role === 'door');
    const told = say.weighs({
      weight: weightOfAll(carcass.panels),
      load: loadIn(spec, carcass),
      doors: doors.map((door) => ({ name: door.key, weight: weightOf(door) })),
    });
    return tell(told, reader);
  }
  if (path[0] !== 'load') return '';
  const { creepFactor } = shop.habits;
  const lines = sagsOf(spec, carcass, shop.habits).map(({ panel, sag, limit, load }) =>
    tell(say.sags({ panel: panel.key, sag, limit, weight: load.own + load.spread + load.middle }), reader),
  );
  return [...lines.map((line) => `- ${line}`), '', tell(say.reckoned({ creep: creepFactor }), reader)].join('\n');
}
