import type { Change, Finding, Repair } from '../../document/finding.js';
import type { Part, Path, Place } from '../../document/place.js';
import type { TreeNode } from '../../document/tree.js';
import type { Unit } from '../../length/units.js';
import type { Message } from '../../words/message.js';
import type { Schema } from '../schema.js';
import { errorAt } from '../tell.js';
import type { At, Attempt, Context } from './context.js';
import { readEither } from './either.js';
import { readList } from './list.js';
import { readNamed } from './named.js';
import { readRecord } from './record.js';
import { readScalar } from './scalar.js';

/** More faults than this in one text help nobody, and an editor chokes on them. */
const MOST_FINDINGS = 1000;

/** Reads one text by schemas and keeps what it tells. */
export class Reader implements Context {
  readonly findings: Finding[] = [];
  /** False once something written had to be left out or something required is missing. */
  sound = true;

  constructor(
    readonly unit: Unit,
    readonly part: Part,
    readonly mendSpans = false,
  ) {}

  read(schema: Schema, node: TreeNode | null, at: At): unknown {
    switch (schema.type) {
      case 'either':
        return readEither(this, schema, node, at);
      case 'record':
        return readRecord(this, schema, node, at);
      case 'named':
        return readNamed(this, schema, node, at);
      case 'list':
        return readList(this, schema, node, at);
      default:
        return readScalar(this, schema, node, at);
    }
  }

  attempt(schema: Schema, node: TreeNode | null, at: At): Attempt {
    const trial = new Reader(this.unit, this.part);
    const value = trial.read(schema, node, at);
    return { value, sound: trial.sound, findings: trial.findings };
  }

  fits(schema: Schema, text: string, place: Place): boolean {
    return this.attempt(schema, { kind: 'scalar', place, text, plain: true }, { path: [], place }).sound;
  }

  get isFull(): boolean {
    return this.findings.length >= MOST_FINDINGS;
  }

  tell(findings: readonly Finding[]): void {
    for (const one of findings) if (!this.isFull) this.findings.push(one);
  }

  fault(finding: Finding): null {
    this.sound = false;
    this.tell([finding]);
    return null;
  }

  wrong(place: Place, message: Message, repairs: readonly Repair[] = []): null {
    return this.fault(errorAt('value-wrong', place, message, { repairs }));
  }

  spoil(): void {
    this.sound = false;
  }

  set(path: Path, text: string): Change {
    return { kind: 'set', part: this.part, path, text };
  }
}
