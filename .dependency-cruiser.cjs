// The arrows of the house. A folder may import only from itself and from folders before it in this table.
const CORE_ORDER = [
  ['derived', 'shared-core/derived/'],
  ['length', 'shared-core/length/'],
  ['words', 'shared-core/words/'],
  ['document', 'shared-core/document/'],
  ['schema', 'shared-core/schema/'],
  ['fittings', 'shared-core/fittings/'],
  ['shop', 'shared-core/shop/'],
  ['book', 'shared-core/book/'],
  ['job', 'shared-core/job/'],
  ['mentions', 'shared-core/mentions/'],
  ['carcass', 'shared-core/carcass/'],
  ['wall', 'shared-core/wall/'],
  ['loads', 'shared-core/loads/'],
  ['hung', 'shared-core/hung/'],
  ['boring', 'shared-core/boring/'],
  ['machining', 'shared-core/machining/'],
  ['tolerance', 'shared-core/tolerance/'],
  ['sheets', 'shared-core/sheets/'],
  ['findings', 'shared-core/findings/'],
  ['drawing', 'shared-core/drawing/'],
  ['papers', 'shared-core/papers/'],
  ['engine', 'shared-core/engine(/|\\.ts)'],
  ['service', 'shared-core/service(/|\\.ts)'],
  ['spoken', 'shared-core/spoken/'],
];

// DEPCRUISE_ROOT lets the test of these rules lay a small house of its own somewhere else.
const ROOT = process.env.DEPCRUISE_ROOT ? `${process.env.DEPCRUISE_ROOT}/` : '';
const at = (path) => `^${ROOT}${path}`;

const arrows = CORE_ORDER.slice(0, -1).map(([name, path], index) => ({
  name: `arrow-${name}`,
  comment: `${name} may import only from the folders to its left: ${
    CORE_ORDER.slice(0, index)
      .map(([left]) => left)
      .join(', ') || 'none'
  }.`,
  severity: 'error',
  from: { path: at(path) },
  to: { path: CORE_ORDER.slice(index + 1).map(([, right]) => at(right)) },
}));

module.exports = {
  forbidden: [
    ...arrows,
    {
      name: 'replay-knows-no-plan',
      comment: 'The replay proves the plan, so it may share no formula with it.',
      severity: 'error',
      from: { path: at('shared-core/machining/replay/') },
      to: { path: at('shared-core/machining/(plan|order|strokes)/') },
    },
    {
      name: 'plan-knows-no-replay',
      comment: 'The plan may not borrow from what proves it.',
      severity: 'error',
      from: { path: at('shared-core/machining/(plan|order|strokes)/') },
      to: { path: at('shared-core/machining/replay/') },
    },
    {
      name: 'nothing-is-worked-out-from-descriptions',
      comment:
        'A machine is described for readers. Planner and replay find out by themselves, or neither could prove the other wrong.',
      severity: 'error',
      from: { path: at('shared-core/(machining/(plan|order|strokes|replay)|boring|book|tolerance)/') },
      to: { path: at('shared-core/machining/described') },
    },
    {
      name: 'scene-knows-no-view',
      comment: 'The scene and its pen serve every drawing, so they know none.',
      severity: 'error',
      from: { path: at('shared-core/drawing/scene/') },
      to: { path: at('shared-core/drawing/(bore-map|machine-view|render|messages)/') },
    },
    {
      name: 'bore-map-and-machine-view-are-strangers',
      comment: 'What both need belongs to the scene or to the words.',
      severity: 'error',
      from: { path: at('shared-core/drawing/(bore-map|machine-view)/') },
      to: { path: at('shared-core/drawing/(bore-map|machine-view|render)/'), pathNot: at('shared-core/drawing/$1/') },
    },
    {
      name: 'core-is-pure',
      comment: 'The core knows no server, client or test, and nothing of Node, the editor or the protocol.',
      severity: 'error',
      from: { path: at('shared-core/') },
      to: { path: [at('(server|client|test)/'), '^vscode', 'node_modules/(@types/)?vscode'] },
    },
    {
      name: 'core-has-no-node',
      comment: 'The core also runs in a browser worker.',
      severity: 'error',
      from: { path: at('shared-core/') },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'core-packages',
      comment:
        'The only packages in the core are the YAML reader and, in folders of their own, the writers of PDF, DXF and codes.',
      severity: 'error',
      from: { path: at('shared-core/'), pathNot: at('shared-core/papers/(render/(pdf|dxf)|panel-labels)/') },
      to: { path: 'node_modules/', pathNot: 'node_modules/yaml/' },
    },
    {
      name: 'pdf-packages',
      comment: 'The writer of PDF needs the library of that name and one that reads fonts.',
      severity: 'error',
      from: { path: at('shared-core/papers/render/pdf/') },
      to: { path: 'node_modules/', pathNot: 'node_modules/(@cantoo/pdf-lib|(@types/)?fontkit)/' },
    },
    {
      name: 'code-packages',
      comment: 'The codes of panel labels come from the library for them.',
      severity: 'error',
      from: { path: at('shared-core/papers/panel-labels/') },
      to: { path: 'node_modules/', pathNot: 'node_modules/uqr/' },
    },
    {
      name: 'dxf-packages',
      comment: 'The writer of DXF needs the library of that name.',
      severity: 'error',
      from: { path: at('shared-core/papers/render/dxf/') },
      to: { path: 'node_modules/', pathNot: 'node_modules/@tarikjabiri/dxf/' },
    },
    {
      name: 'server-sees-core-only',
      severity: 'error',
      from: { path: at('server/') },
      to: { path: at('(client|test)/') },
    },
    {
      name: 'server-asks-the-service',
      comment:
        'Language server and command line know of the core what shared-core/service.ts gives, the messages of the panels, and how words are told.',
      severity: 'error',
      from: { path: at('server/') },
      to: { path: at('shared-core/'), pathNot: at('shared-core/(service\\.ts|drawing/messages/|words/|spoken/)') },
    },
    {
      name: 'server-packages',
      comment: 'The server needs the protocol library and, for sheet layouts, the linear programming library.',
      severity: 'error',
      from: { path: at('server/') },
      to: { path: 'node_modules/', pathNot: 'node_modules/(vscode-(languageserver|jsonrpc)|highs/|@types/node/)' },
    },
    {
      name: 'server-has-no-editor',
      severity: 'error',
      from: { path: at('server/') },
      to: { path: ['^vscode$', 'node_modules/@types/vscode/'] },
    },
    {
      name: 'client-sees-no-server',
      comment: 'Client and server talk over the protocol; the types of messages live in the core.',
      severity: 'error',
      from: { path: at('client/') },
      to: { path: at('(server|test)/') },
    },
    {
      name: 'extension-computes-nothing',
      comment:
        'The extension may take types from the core and how words are told, never its computing code: that runs in the server.',
      severity: 'error',
      from: { path: at('client/'), pathNot: at('client/webview/') },
      to: { path: at('shared-core/'), pathNot: at('shared-core/words/'), dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'webview-stands-alone',
      comment: 'The page in the panel has only the core and itself.',
      severity: 'error',
      from: { path: at('client/webview/') },
      to: { path: [at('client/(?!webview/)'), 'node_modules/(?!(@types/)?three/)', '^vscode'] },
    },
    {
      name: 'only-the-box-view-is-solid',
      comment: 'The library that draws solids is large: it is loaded with the page that needs it, and with no other.',
      severity: 'error',
      from: { path: at('(shared-core|server|client)/'), pathNot: at('client/webview/box/') },
      to: { path: 'node_modules/(@types/)?three/' },
    },
    {
      name: 'webview-has-no-node',
      severity: 'error',
      from: { path: at('client/webview/') },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-cycles-of-types',
      comment: 'Types that need each other stand in one file; names that a list is of stand to its left.',
      severity: 'error',
      from: { path: at('(shared-core|server|client)/') },
      to: { circular: true },
    },
    {
      name: 'no-orphans',
      comment: 'A file that nobody imports and that imports nobody is dead.',
      severity: 'error',
      from: { orphan: true, path: at('(shared-core|server|client)/'), pathNot: ['\\.d\\.ts$', '\\.json$', '\\.mjs$'] },
      to: {},
    },
    {
      name: 'not-resolvable',
      severity: 'error',
      // Mutation runs have packages of their own, which are fetched when one is asked for.
      from: { pathNot: '^test/mutation/' },
      to: { couldNotResolve: true, pathNot: '^vscode$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)(dist|test/editor/host|test/editor/out|test/editor/work)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.d.ts', '.js', '.mjs', '.json'],
    },
  },
};
