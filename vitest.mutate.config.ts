import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** The tests that a mutation of a rule is tried on: worked examples; the laws and the demo go through every rule and take too long. */
export default defineConfig({
  resolve: { alias: { '@': fileURLToPath(new URL('.', import.meta.url)) } },
  test: {
    include: ['tests/rules/**/*.test.ts'],
    exclude: [
      'tests/rules/demo/**',
      'tests/rules/*.test.ts',
      'tests/rules/gate/**',
      'tests/rules/charts/**',
      'tests/rules/statistics/**',
    ],
    testTimeout: 30_000,
  },
})
