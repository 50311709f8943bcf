import { counted, listed } from '../../words/english.js';
import { messages, type Message } from '../../words/message.js';
import { inUnit } from '../../words/names.js';
import { labels } from '../../words/told.js';
import { percent } from './percent.js';

export const HEADS = labels('joint-heads', {
  joint: 'Joint',
  front: 'Front edge',
  step: 'Outside face',
  gap: 'Gap',
  play: 'Play wanted',
  closes: 'Goes in',
  fits: 'Within limits',
});

/** What is said of the joints of a job and what can come out at them. */
export const say = messages('joints', {
  how: (_: unknown, { unit }) =>
    `By the shop’s tolerances, in ${inUnit(unit)}: root of the sum of squares / not passed by 19 boxes of 20 / worst case.`,
  goesIn: ({ samples }: { readonly samples: number }) =>
    `Goes in: in how many of ${samples} sampled boxes every dowel or screw finds its bores with the play that it has. It says nothing of offsets and gaps.`,
  within: ({ limits }: { readonly limits: readonly string[] }) =>
    `Within limits: in how many it goes in, and front edge, outside face and gap keep the shop’s limits too (${listed(limits)}). Offsets count where the panels are drawn flush.`,
  worstCase: () =>
    'A worst case has every tolerance at its bound at once, so it may pass a limit that every sampled box keeps.',
  notMeasured: () =>
    'Nothing here is measured on your boards: the figures are as good as the tolerances of the shop file.',
  box: ({
    carcass,
    joints,
    samples,
    close,
    fit,
  }: {
    readonly carcass: string;
    readonly joints: number;
    readonly samples: number;
    readonly close: number;
    readonly fit: number;
  }) =>
    `${carcass}: ${counted(joints, 'joint')}; of ${samples} boxes ${percent(close)} go together, ${percent(fit)} within the limits`,
  unknown: ({ joint, reason }: { readonly joint: string; readonly reason: Message }, show) =>
    `${joint}: no figures. ${show.tell(reason)}`,
});
