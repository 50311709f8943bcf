/** To the client: the server has failed at something. */
export const FAULT = 'borewright/fault';

/**
 * Where the server failed, without words: those of a fault may hold text of the owner's files, and a path his name. So it may
 * stand in a report that he sends.
 */
export interface ToldFault {
  /** A thread that ended by itself or gave no sign of life, or a single answer that failed. */
  readonly how: 'ended' | 'stuck' | 'failed';
  /** Of the fault, such as `RangeError`; null where there was none. */
  readonly kind: string | null;
  /** What was called, the last call first, such as `cutJob (server-thread.cjs:12:34)`. */
  readonly frames: readonly string[];
}

const MOST_FRAMES = 20;

/** Of a thing thrown what can be told. */
export function toldFault(how: ToldFault['how'], fault: unknown): ToldFault {
  if (!(fault instanceof Error)) return { how, kind: null, frames: [] };
  const { stack = '', message } = fault;
  // The words of the fault come first, and may look like anything.
  const called = stack.slice(Math.max(0, stack.indexOf(message)) + message.length);
  const frames = called.split('\n').flatMap((line) => frameIn(line) ?? []);
  return { how, kind: plainName(fault.name), frames: frames.slice(0, MOST_FRAMES) };
}

/** `    at async Object.read (/home/somebody/dist/server.cjs:1:23)`; null for a line of the fault's own words. */
function frameIn(line: string): string | null {
  const found =
    /^ {4}at (?:async |new )*(?:([\w$.#<>]+)(?: \[as [\w$.#]+\])? )?\(?(?:.*[/\\])?([\w.-]+):(\d+):(\d+)\)?$/.exec(
      line,
    );
  if (found === null) return null;
  const [, called, file, row, column] = found;
  return CODE.test(file!) ? `${called ?? 'anonymous'} (${file}:${row}:${column})` : null;
}

/** Files of the program; no other may be named. */
const CODE = /^[\w.-]+\.[cm]?[jt]s$/;

const plainName = (name: string): string => (/^[A-Za-z]{1,40}$/.test(name) ? name : 'Error');
