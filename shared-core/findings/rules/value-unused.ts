import { CIRCUMSTANCES, type Circumstance } from '../../job/reach.js';
import { means } from '../../job/panel-key.js';
import { messages } from '../../words/message.js';
import { remove } from '../changes.js';
import { holds } from '../circumstances.js';
import type { CarcassRule } from '../rule.js';

interface Unused {
  readonly key: string;
  readonly circumstance: Circumstance;
}

export const valueUnusedMessages = messages('value-unused', {
  here: ({ key, circumstance }: Unused) =>
    `\`${key}\` does nothing here: it counts only ${CIRCUMSTANCES[circumstance]}. Remove it, or change what it depends on.`,
  inDefaults: ({ key, circumstance }: Unused) =>
    `\`${key}\` does nothing in any carcass of this job: it counts only ${CIRCUMSTANCES[circumstance]}. Remove it, or change what it depends on.`,
  remove: ({ key }: Pick<Unused, 'key'>) => `Remove \`${key}\``,
});
const say = valueUnusedMessages;

export const valueUnused: CarcassRule = {
  name: 'value-unused',
  severity: 'warning',
  about: {
    what: 'A value has no effect where it is written.',
    why: 'Whoever wrote it expected an effect, such as rails of another width where a full top closes the carcass, or a row in a panel that gets none. Without a finding it comes to light only at the clamp.',
    remedy: 'Remove the value, or change what it depends on; the message says what that is.',
    example: 'kind: base\nwidth: 600\ntop: over\nrail-width: 90',
  },
  check(context) {
    const { panels } = context.carcass;
    return context.written
      .filter(({ panel }) => panel === null || panels.some(({ key }) => means(panel, key)))
      .filter(({ circumstance, panel, path }) => !holds(circumstance, context, panel, path))
      .map(({ path, place, circumstance, panel }) => {
        const key = String(path.at(-1));
        return {
          place,
          ...(panel !== null && panels.some((one) => one.key === panel) && { panel }),
          message: say.here({ key, circumstance }),
          repairs: [{ title: say.remove({ key }), changes: [remove(path)], preferred: true }],
        };
      });
  },
};
