import nextCoreWebVitals from 'eslint-config-next/core-web-vitals'
import nextTypescript from 'eslint-config-next/typescript'

const TYPESCRIPT = ['**/*.ts', '**/*.tsx']

const WITH_COMPONENTS = ['app/**', '**/*.tsx']

/** What is asked of components, of nothing else: a third of all files are, and the asking took a fifth of the time. */
const whereComponentsAre = (config) => (config.rules ? { ...config, files: WITH_COMPONENTS } : config)

/** Refuses imports by name in some files; the whole graph, relative paths included, is checked by check:boundaries. */
const ban = (files, ...patterns) => ({ files, rules: { 'no-restricted-imports': ['error', { patterns }] } })

const PURE = 'shared/ is pure: pass what it needs as an argument.'
const CLOCK = 'shared/ has no clock: pass the time as an argument.'
const CHANCE = 'shared/ has no chance: pass the numbers as an argument.'

export default [
  {
    ignores: [
      '**/*.json',
      '.next/**',
      'data/**',
      'lib/db/generated/**',
      'test-results/**',
      'playwright-report/**',
    ],
  },
  ...nextCoreWebVitals.map(whereComponentsAre),
  { files: WITH_COMPONENTS, rules: { 'import/no-anonymous-default-export': 'off' } },
  ...nextTypescript,
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: TYPESCRIPT,
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
      '@typescript-eslint/await-thenable': 'error',
      // A default would take in a new member of a closed list without a word.
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      '@typescript-eslint/only-throw-error': 'error',
      '@typescript-eslint/consistent-type-imports': [
        'error',
        { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false },
      ],
    },
  },
  {
    rules: {
      eqeqeq: 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      'no-console': 'error',
      'no-restricted-globals': ['error', { name: 'alert' }, { name: 'confirm' }],
    },
  },
  { files: ['scripts/**', 'tests/**', '*.config.*'], rules: { 'no-console': 'off' } },
  ban(
    ['shared/**'],
    {
      group: [
        'node:*',
        'fs',
        'path',
        'crypto',
        'os',
        'child_process',
        'pg',
        '@prisma/*',
        'next',
        'next/*',
        'react',
        'react/*',
        'react-dom',
      ],
      message: PURE,
    },
    {
      group: ['@/lib/*', '@/app/*', '@/seed/*', '@/scripts/*', '@/tests/*'],
      message: 'shared/ knows nothing of the rest.',
    },
  ),
  {
    files: ['shared/**'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...[
          'process',
          'Buffer',
          'fetch',
          'window',
          'document',
          'localStorage',
          'crypto',
          'performance',
          'setTimeout',
          'setInterval',
        ].map((name) => ({ name, message: PURE })),
      ],
      'no-restricted-syntax': [
        'error',
        { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: CLOCK },
        { selector: 'CallExpression[callee.name="Date"]', message: CLOCK },
        { selector: 'MemberExpression[object.name="Date"][property.name="now"]', message: CLOCK },
        { selector: 'MemberExpression[object.name="Math"][property.name="random"]', message: CHANCE },
      ],
    },
  },
  ban(['lib/**'], {
    group: ['@/app/*', '@/seed/*', '@/scripts/*', '@/tests/*'],
    message: 'lib/ knows nothing of the screen.',
  }),
  ban(
    ['app/**'],
    {
      group: ['@/lib/db/*', '@prisma/*', 'pg'],
      message: 'Read through lib/queries, change through lib/commands.',
    },
    { group: ['@/seed/*', '@/scripts/*', '@/tests/*'], message: 'Nothing the app shows comes from there.' },
  ),
]
