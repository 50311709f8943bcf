import { tell, type PaperName } from '../../shared-core/service.js';
import type { Told } from '../../shared-core/words/told.js';
import { say } from './messages.js';
import type { Stage } from './task.js';

/** In a unit of the shop's own money, and in a square metre. */
const COINS = 100;

/** How far papers have come, on one line. */
export function stageWords(stage: Stage): Told {
  if (stage.kind === 'paper') {
    const { name, index, papers } = stage;
    return tell(say.paper({ name: plain(name), place: index + 1, papers }), 'mm');
  }
  const { board, index, boards, priced, found } = stage;
  const what = tell(say.boards({ board, place: index + 1, boards }), 'mm');
  if (found === null) return what;
  return tell(say.found({ what, cost: found.cost / COINS, bound: found.bound / COINS, priced }), 'mm');
}

const plain = (name: PaperName): string => name.replaceAll('-', ' ');
