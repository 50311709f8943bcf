import { messages } from '../words/message.js';

/** Why there are no figures of a joint. */
export const say = messages('tolerance', {
  notCarriedOut: ({ panel }: { readonly panel: string }) => `The set-ups for ${panel} cannot be carried out.`,
  halfBored: () => 'No set-up bores both halves of any of its places.',
});
