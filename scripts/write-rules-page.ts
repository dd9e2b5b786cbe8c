import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { rulesPage } from './rules-page/rules-page'

/** Writes docs/rules.md from the declared rules and their tests. */
const root = fileURLToPath(new URL('..', import.meta.url))
writeFileSync(`${root}/docs/rules.md`, rulesPage(root))
