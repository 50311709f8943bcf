import type { CarcassRule } from '../rule.js';
import { nearestName } from '../../schema/nearest.js';
import { listed } from '../words.js';

export const panelUnknown: CarcassRule = {
  name: 'panel-unknown',
  severity: 'error',
  about: {
    what: 'Something is said about a panel that this carcass has not.',
    why: 'What is written there has no effect: the panel that was meant is made like all the others.',
    remedy: 'Use the name of a panel of this carcass, or take the entry out.',
    example: 'kind: base\nwidth: 600\npanels:\n  top: { rows: none }   # a base has rails',
  },
  check(context) {
    const known = context.carcass.panels.map((panel) => panel.key);
    return [...context.spec.panels.values()]
      .filter(({ key }) => !known.some((panel) => panel === key.value || panel.startsWith(`${key.value}-bay-`)))
      .map(({ key }) => {
        const nearest = nearestName(key.value, known.filter((panel) => !context.spec.panels.has(panel)));
        return {
          place: key.place,
          message: `This carcass has no panel ‘${key.value}’. It has ${listed(known)}.`,
          repairs: [
            ...(nearest === null
              ? []
              : [
                  {
                    title: `Call it ${nearest}`,
                    changes: [{ kind: 'rename-key' as const, part: 'self' as const, path: ['panels', key.value], text: nearest }],
                    preferred: true,
                  },
                ]),
            {
              title: `Take ‘${key.value}’ out`,
              changes: [{ kind: 'remove' as const, part: 'self' as const, path: ['panels', key.value] }],
              preferred: false,
            },
          ],
        };
      });
  },
};
