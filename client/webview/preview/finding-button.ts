import type { SceneFinding } from '../../../shared-core/drawing/scene/scene.js';
import { h } from '../page/dom.js';
import { SEVERITIES } from './messages.js';

/** The line of a finding in a list, to be pressed. */
export function findingButton({
  key,
  severity,
  message,
  rule,
}: Pick<SceneFinding, 'key' | 'severity' | 'message' | 'rule'>): HTMLButtonElement {
  return h(
    'button',
    { type: 'button', class: 'finding-line', 'data-key': key },
    h('span', { class: `gravity ${severity}` }, SEVERITIES[severity]),
    h('span', { class: 'message' }, message),
    h('span', { class: 'rule' }, rule),
  );
}
