import { tell, type PaperName } from '../../shared-core/service.js';
import type { Told } from '../../shared-core/words/told.js';
import { say } from './messages.js';
import type { Stage } from './task.js';

/** In the shop's own money. */
const COINS = 100;

/** How far papers have come, on one line. */
export function stageWords(stage: Stage): Told {
  if (stage.kind === 'paper') {
    const { name, index, papers } = stage;
    return tell(say.paper({ name: plain(name), place: index + 1, papers }), 'mm');
  }
  const { board, index, boards, found } = stage;
  const what = tell(say.boards({ board, place: index + 1, boards }), 'mm');
  return found === null ? what : tell(say.found({ what, cost: found.cost / COINS, bound: found.bound / COINS }), 'mm');
}

const plain = (name: PaperName): string => name.replaceAll('-', ' ');
