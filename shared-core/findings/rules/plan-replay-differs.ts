import type { Steps } from '../../derived/steps.js';
import { blankOf } from '../../machining/blank.js';
import { compareHoles } from '../../machining/replay/compare.js';
import { replayStrokes } from '../../machining/replay/replay.js';
import { messages, type Message } from '../../words/message.js';
import { onceForEquals } from '../equals.js';
import { boresOfPanel } from '../lookups.js';
import type { CarcassContext, SlowRule } from '../rule.js';

export const planReplayMessages = messages('plan-replay-differs', {
  differs: ({ panel, fault }: { readonly panel: string; readonly fault: Message }, show) =>
    `The set-ups do not make the bore map of ${panel}. ${show.tell(fault)} The fault is Borewright’s, not yours: do not bore this panel from them.`,
});

export const planReplayDiffers: SlowRule = {
  name: 'plan-replay-differs',
  severity: 'error',
  slow: true,
  about: {
    what: 'Carrying out the set-ups would not give the holes of the bore map. This is a fault of Borewright, not of the job.',
    why: 'No plan is trusted: a separate replay lays each panel against the stops of its set-ups, lowers the loaded spindles, and its holes must be those of the bore map. If you ever see this, bore nothing of this carcass from them.',
    remedy: 'Report it with the job file and the shop file.',
    example: '# No job shows this: it must never be seen.',
  },
  *check(context, said) {
    const { spec, boring } = context;
    // A bore that is wrong in itself (through an edge, or twice in one place) can have no set-up that is right.
    const sound = (panel: string): boolean => !boring.bores.some((bore) => bore.panel === panel && said.has(bore.id));
    const differ = yield* onceForEquals(differing, context);
    return differ
      .filter(({ panel }) => sound(panel))
      .map(({ panel, fault }) => ({
        place: spec.name.place,
        panel,
        message: planReplayMessages.differs({ panel, fault }),
      }));
  },
};

interface Differing {
  readonly panel: string;
  readonly fault: Message;
}

/** The panels whose holes would not be those of the bore map. */
function* differing(context: CarcassContext): Steps<readonly Differing[]> {
  const { carcass, operations, alone } = context;
  yield* alone.making();
  const { strokes } = alone;
  const missed = new Set(operations.unreachable.flatMap((one) => one.bores.map((bore) => bore.id)));
  const differ: Differing[] = [];
  for (const panel of carcass.panels) {
    yield;
    const wanted = boresOfPanel(context, panel.key).filter((bore) => !missed.has(bore.id));
    const replay = replayStrokes(strokes.get(panel.key)!, panel.key, blankOf(panel));
    const fault = replay.ok ? compareHoles(replay.holes, wanted)?.message : replay.problems[0]?.message;
    if (fault !== undefined) differ.push({ panel: panel.key, fault });
  }
  return differ;
}
