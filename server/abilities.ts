import type { InitializeParams } from 'vscode-languageserver';
import { linksTo, type ReferenceLinks } from './reference-links.js';

/** What the client can do, as far as the features ask. */
export interface ClientAbilities {
  readonly versionedEdits: boolean;
  /** An edit of the workspace may make a file. */
  readonly createsFiles: boolean;
  /** Asks for findings itself, and wants to be sent none. */
  readonly pulls: boolean;
  /** The edit of a code action may come when it is chosen. */
  readonly resolvesEdits: boolean;
  readonly snippets: boolean;
  readonly related: boolean;
  readonly codeDescription: boolean;
  /** Hovers may carry pictures in their own text, which an editor that does not show them would write out. */
  readonly pictures: boolean;
  /** The window is not trusted: only what lies in its folders may be read. */
  readonly isRestricted: boolean;
  /** Where the pages of the reference can be opened; null where nobody said. */
  readonly reference: ReferenceLinks | null;
}

/**
 * What a client says of itself; of one that has not yet said anything, nothing.
 * @param reference the folder of the reference, unless the client says otherwise
 */
export function abilitiesOf(params: InitializeParams | null, reference: string | null): ClientAbilities {
  const text = params?.capabilities.textDocument;
  const edits = params?.capabilities.workspace?.workspaceEdit;
  const options: unknown = params?.initializationOptions;
  const said = saidOf(options, 'reference');
  return {
    // A client that sends where the cursor is had better be sent findings: they wait for a line to be finished.
    pulls: text?.diagnostic !== undefined && saidOf(options, 'diagnostics') !== 'push',
    resolvesEdits: text?.codeAction?.resolveSupport?.properties.includes('edit') === true,
    versionedEdits: edits?.documentChanges === true,
    createsFiles: edits?.documentChanges === true && edits.resourceOperations?.includes('create') === true,
    snippets: text?.completion?.completionItem?.snippetSupport === true,
    related: text?.publishDiagnostics?.relatedInformation === true,
    codeDescription: text?.publishDiagnostics?.codeDescriptionSupport === true,
    pictures: saidOf(options, 'hoverPictures') === true,
    isRestricted: saidOf(options, 'restricted') === true,
    reference: linksTo(typeof said === 'string' ? said : reference, saidOf(options, 'referenceCommand')),
  };
}

/** One of the options that a client gives when it starts; not to be trusted. */
function saidOf(options: unknown, name: string): unknown {
  return typeof options === 'object' && options !== null ? Reflect.get(options, name) : undefined;
}
