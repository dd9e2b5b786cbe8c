import { writeFileSync } from 'node:fs'
import { glossaryDocument } from '@/shared/glossary/glossary'

/** Writes docs/glossary.md from the terms in shared/glossary. */
writeFileSync(new URL('../docs/glossary.md', import.meta.url), glossaryDocument())
