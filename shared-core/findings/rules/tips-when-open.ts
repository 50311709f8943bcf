import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { balanceOf, tips, type Balance } from '../../loads/tipping.js';
import { listed } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { isAboveFloor } from '../../job/above-floor.js';
import { bearsWorktop } from '../../wall/line-up.js';
import type { CarcassRule } from '../rule.js';

interface Tipping extends Balance {
  readonly caution: Message;
}

export const say = messages('tips-when-open', {
  tips: ({ doors, drawers, open, before, weight, behind, caution }: Tipping, show) => {
    const parts = listed([...(doors > 0 ? ['doors'] : []), ...(drawers > 0 ? ['drawers'] : [])]);
    const narrower = doors > 0 ? ' or its doors narrower' : '';
    return `Empty and with its ${parts} open the carcass tips forward: the ${parts} (${kilograms(open)}) have their centre ${show.length(before)} before the line that it tips about, the rest (${kilograms(weight)}) has its own ${show.length(behind)} behind it. Fix it to the wall before its ${parts} are put in, or make it deeper${narrower}. ${show.tell(caution)}`;
  },
});

export const tipsWhenOpen: CarcassRule = {
  name: 'tips-when-open',
  severity: 'warning',
  about: {
    what: 'A carcass on the floor tips forward when its doors and drawers are all open and nothing stands in it.',
    why: 'Doors and drawers that are open weigh before the edge that a carcass stands on. One that tips falls on whoever opens it, often a child. Moments of weights about the front edge of the plinth, or of the sides where there is none; all doors are open at a right angle and all drawers as far as their slides go. One whose drawers are full, or that is climbed on, can tip though this says nothing. Nothing is said of a carcass that a worktop comes to lie on, as it ties it to its neighbours; open its drawers one by one until it does. No structural approval: fix tall carcasses to the wall in any case.',
    remedy:
      'Fix it to the wall before its doors and drawers are put in. Doors in two leaves and a deeper carcass tip less.',
    example: 'kind: tall\nwidth: 600\ndepth: 300\ndoors: left',
  },
  check({ spec, carcass, shop }) {
    const underWorktop = bearsWorktop(spec) && shop.habits.worktopThickness > 0;
    const balance = underWorktop || isAboveFloor(spec) ? null : balanceOf(carcass);
    if (balance === null || !tips(balance)) return [];
    return [{ place: spec.name.place, message: say.tips({ ...balance, caution: sayOfLoads.noApproval() }) }];
  },
};
