import tseslint from 'typescript-eslint';

export default tseslint.config(
  {
    ignores: [
      'dist/**',
      'node_modules/**',
      'test/editor/host/**',
      'test/editor/out/**',
      'test/editor/work/**',
      'test/house/fixture/**',
    ],
  },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
      },
    },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      'object-shorthand': 'error',
      'prefer-const': 'error',
      'no-restricted-syntax': [
        'error',
        ...['PropertyDefinition', "MethodDefinition[kind!='constructor']", 'TSParameterProperty'].map((what) => ({
          selector: `${what}[accessibility='private']`,
          message: 'What is private is written #name.',
        })),
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Figures in messages are numbers by nature.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // `noUncheckedIndexedAccess` makes the assertion the honest form where an index was just tested.
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Guards at the edge of untyped input (YAML, messages) are wanted even where the type claims otherwise.
      '@typescript-eslint/no-unnecessary-condition': 'off',
    },
  },
  {
    files: ['shared-core/**/*.ts', 'server/**/*.ts', 'client/**/*.ts'],
    // A longer function holds more than one idea.
    rules: { 'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }] },
  },
  {
    files: ['shared-core/**/*.ts'],
    rules: {
      // The same text must give the same output: nothing in the core may depend on the clock, chance or the locale.
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'The core is deterministic: take a seed.' },
        { object: 'Date', property: 'now', message: 'The core is deterministic: no clock.' },
        { property: 'toLocaleString', message: 'The core is deterministic: no locale.' },
        { property: 'localeCompare', message: 'The core is deterministic: compare code units.' },
      ],
    },
  },
  {
    files: ['test/**/*.ts', 'server/cli.ts', 'server/cli/**/*.ts'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['**/*.js', '**/*.mjs', '**/*.cjs'],
    ...tseslint.configs.disableTypeChecked,
    rules: { ...tseslint.configs.disableTypeChecked.rules, 'no-console': 'off' },
  },
);
