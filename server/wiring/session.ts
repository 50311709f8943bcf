import type { Connection } from 'vscode-languageserver';
import type { FaceCutter } from '../../shared-core/service.js';
import type { ClientAbilities } from '../abilities.js';
import type { Answer } from '../answers.js';
import type { ClientSide } from '../client-side.js';
import type { TokenTeller } from '../features/semantic-tokens.js';
import type { BoundedFiles } from '../bounded-files.js';
import type { LastHints } from '../last-hints.js';
import type { LastLenses } from '../last-lenses.js';
import type { LastPlans } from '../last-plans.js';
import type { Names } from '../names.js';
import type { Orders } from '../orders.js';
import type { WritePapers } from '../papers/writing.js';
import type { Publisher } from '../publisher.js';
import type { WholeWorkspace } from '../whole-workspace.js';
import type { Workspace } from '../workspace.js';

/** What the features of one connection work with. */
export interface Session {
  readonly connection: Connection;
  readonly files: BoundedFiles;
  readonly workspace: Workspace;
  readonly names: Names;
  readonly publisher: Publisher;
  /** What is wrong in files that are not open. */
  readonly wholeWorkspace: WholeWorkspace;
  readonly lastPlans: LastPlans;
  readonly lastHints: LastHints;
  readonly lastLenses: LastLenses;
  readonly tokens: TokenTeller;
  /** Where the order of set-ups is sought. */
  readonly orders: Orders;
  /** Makes and writes papers; null where there is no disk. */
  readonly writePapers: WritePapers | null;
  /** Brings the lettering of a drawing along; null where it is not there. */
  readonly face: () => FaceCutter | null;
  readonly client: ClientSide;
  /** What the client can do: nothing before it has said so. */
  abilities: ClientAbilities;
  /** Answers what is asked of a document. */
  readonly answer: Answer;
  /** Answers what is asked of no one document: with `nothing` where the work throws, which is logged. */
  readonly guarded: <R>(what: string, nothing: R, work: () => R) => R;
}
