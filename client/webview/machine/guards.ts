import type {
  FromMachinePage,
  MachineStepReply,
  MachineSubject,
  StepAddress,
  ToMachinePage,
} from '../../../shared-core/drawing/messages/machine-view.js';
import type { SetUpsReply } from '../../../shared-core/drawing/messages/set-ups.js';
import { isNearer, isRecord, isTextOrNull } from '../guards.js';

// As in the preview: what comes over a channel or out of a kept state is not trusted to be what its type says.

const isTexts = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((one) => typeof one === 'string');

export function isMachineSubject(value: unknown): value is MachineSubject {
  return (
    isRecord(value) &&
    typeof value.uri === 'string' &&
    (value.side === 'machine' || value.side === 'list') &&
    isTextOrNull(value.carcass) &&
    isTextOrNull(value.panel)
  );
}

export function isStepAddress(value: unknown): value is StepAddress {
  return (
    isRecord(value) &&
    typeof value.setUp === 'string' &&
    typeof value.carcass === 'string' &&
    typeof value.panel === 'string' &&
    typeof value.step === 'number' &&
    Number.isInteger(value.step) &&
    value.step >= 0
  );
}

function isListed(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value.id === 'string' &&
    typeof value.content === 'string' &&
    isTexts(value.changes) &&
    isTexts(value.cautions) &&
    isTexts(value.lay) &&
    Array.isArray(value.settings) &&
    Array.isArray(value.runs) &&
    value.runs.every(
      (run) =>
        isRecord(run) &&
        typeof run.carcass === 'string' &&
        typeof run.panel === 'string' &&
        typeof run.content === 'string' &&
        Array.isArray(run.steps),
    )
  );
}

export function isSetUpsReply(value: unknown): value is SetUpsReply {
  if (!isRecord(value) || typeof value.uri !== 'string' || typeof value.version !== 'number') return false;
  if (value.kind === 'nothing') return typeof value.reason === 'string';
  return (
    value.kind === 'set-ups' &&
    isTextOrNull(value.stale) &&
    Array.isArray(value.setUps) &&
    value.setUps.every(isListed) &&
    isRecord(value.totals) &&
    typeof value.totals.words === 'string' &&
    Array.isArray(value.unbored) &&
    isTexts(value.broken)
  );
}

export function isStepReply(value: unknown): value is MachineStepReply {
  if (!isRecord(value) || typeof value.uri !== 'string' || typeof value.version !== 'number') return false;
  if (!isStepAddress(value.address)) return false;
  if (value.kind === 'nothing') return typeof value.reason === 'string';
  const { scene } = value;
  return (
    value.kind === 'step' &&
    isTextOrNull(value.stale) &&
    isRecord(scene) &&
    Array.isArray(scene.shapes) &&
    Array.isArray(scene.spindles) &&
    Array.isArray(scene.holes) &&
    Array.isArray(scene.signs) &&
    isRecord(scene.words)
  );
}

/** Whether a message is one that the extension sends to the page. */
export function isToMachinePage(value: unknown): value is ToMachinePage {
  if (!isRecord(value)) return false;
  switch (value.type) {
    case 'subject':
      return isMachineSubject(value.subject);
    case 'set-ups':
      return isSetUpsReply(value.reply);
    case 'step':
      return isNearer(value.nearer) && isStepReply(value.reply);
    case 'ticks':
      return isTexts(value.ticks);
    case 'trouble':
      return typeof value.message === 'string';
    default:
      return false;
  }
}

/** Whether a message is one that the page sends to the extension. */
export function isFromMachinePage(value: unknown): value is FromMachinePage {
  if (!isRecord(value)) return false;
  switch (value.type) {
    case 'ready':
      return value.subject === null || isMachineSubject(value.subject);
    case 'subject':
      return isMachineSubject(value.subject);
    case 'step':
      return isNearer(value.nearer) && isStepAddress(value.address);
    case 'tick':
      return typeof value.on === 'boolean' && isTexts(value.ticks);
    case 'reveal':
      return typeof value.carcass === 'string' && typeof value.panel === 'string';
    default:
      return false;
  }
}
