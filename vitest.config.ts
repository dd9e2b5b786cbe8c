import { defineConfig } from 'vitest/config'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('.', import.meta.url))

/** Three projects: the pure rules, the commands against a database, the faults against a running server. */
export default defineConfig({
  resolve: { alias: { '@': root } },
  test: {
    projects: [
      {
        extends: true,
        test: { name: 'rules', include: ['tests/rules/**/*.test.ts', 'tests/laws/**/*.test.ts'] },
      },
    ],
  },
})
