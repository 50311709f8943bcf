import type { Micrometres } from '../../length/units.js';
import { kilograms, say as sayOfLoads } from '../../loads/messages.js';
import { balanceOf, tips } from '../../loads/tipping.js';
import { messages, type Message } from '../../words/message.js';
import { isAboveFloor } from '../../wall/line-up.js';
import type { CarcassRule } from '../rule.js';

interface Tipping {
  readonly doors: number;
  readonly before: Micrometres;
  readonly weight: number;
  readonly behind: Micrometres;
  readonly caution: Message;
}

export const say = messages('tips-when-open', {
  tips: ({ doors, before, weight, behind, caution }: Tipping, show) =>
    `Empty and with its doors open the carcass tips forward: the doors (${kilograms(doors)}) have their centre ${show.length(before)} before the line that it tips about, the rest (${kilograms(weight)}) has its own ${show.length(behind)} behind it. Fix it to the wall before its doors are hung, or make it deeper or its doors narrower. ${show.tell(caution)}`,
});

export const tipsWhenOpen: CarcassRule = {
  name: 'tips-when-open',
  severity: 'warning',
  about: {
    what: 'A carcass on the floor tips forward when its doors are open and nothing stands in it.',
    why: 'Doors that are open weigh before the edge that a carcass stands on. One that tips falls on whoever opens it, often a child. Moments of weights about the front edge of the plinth, or of the sides where there is none; one that is loaded or climbed on can tip though this says nothing. No structural approval: fix tall carcasses to the wall in any case.',
    remedy: 'Fix it to the wall before its doors are hung. Doors in two leaves and a deeper carcass tip less.',
    example: 'kind: tall\nwidth: 600\ndepth: 300\ndoors: left',
  },
  check({ spec, carcass }) {
    const balance = isAboveFloor(spec) ? null : balanceOf(carcass);
    if (balance === null || !tips(balance)) return [];
    const caution = sayOfLoads.noApproval();
    return [{ place: spec.name.place, message: say.tips({ ...balance, caution }) }];
  },
};
