import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('.', import.meta.url))

/** Minutes of plain computing, which counting branches would make longer by half. */
const WHOLE_BOARDS = [
  'tests/rules/board/beside-another-renderer.test.ts',
  'tests/rules/board/real-boards.test.ts',
]

const ON_A_DATABASE = {
  globalSetup: ['tests/setup/global-database.ts'],
  testTimeout: 120_000,
  hookTimeout: 300_000,
}

/**
 * Six projects: the pure rules, real boards and another renderer beside ours, what needs no database of lib and app, the
 * commands against a database, those of them that set a folder, a setting or a module of their process, the faults against
 * real processes.
 */
export default defineConfig({
  resolve: { alias: { '@': root } },
  test: {
    // One worker fewer is the default, which on two cores is one.
    maxWorkers: '100%',
    setupFiles: ['tests/setup/random-search.ts'],
    // Asked for with --coverage, for the rules and for lib and app together.
    coverage: {
      provider: 'v8',
      include: ['shared/**/*.ts', 'lib/**/*.ts'],
      exclude: ['lib/db/generated/**'],
      reporter: ['text-summary'],
      reportOnFailure: true,
      // Rules, laws, lib and app come to 71.5 %; with boards, commands and stories, which are not counted, to more.
      thresholds: { branches: 71 },
    },
    projects: [
      {
        extends: true,
        test: {
          name: 'rules',
          include: ['tests/rules/**/*.test.ts', 'tests/laws/**/*.test.ts'],
          exclude: WHOLE_BOARDS,
          testTimeout: 30_000,
          // What they test is pure, so that one file leaves nothing behind for the next; loading it anew took half the time.
          isolate: false,
        },
      },
      {
        extends: true,
        test: { name: 'whole-boards', include: WHOLE_BOARDS, testTimeout: 180_000 },
      },
      {
        extends: true,
        test: {
          name: 'lib-and-app',
          include: ['tests/lib/**/*.test.ts', 'tests/app/**/*.test.ts'],
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'commands',
          include: ['tests/commands/*.test.ts'],
          // A database of its own is all that one file has; reading all modules anew took as long as its tests.
          isolate: false,
          ...ON_A_DATABASE,
        },
      },
      {
        extends: true,
        test: {
          name: 'commands-alone',
          include: ['tests/commands/alone/*.test.ts'],
          ...ON_A_DATABASE,
        },
      },
      {
        extends: true,
        test: {
          name: 'faults',
          include: ['tests/faults/**/*.test.ts'],
          globalSetup: ['tests/setup/built-app.ts', 'tests/setup/global-database.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
})
