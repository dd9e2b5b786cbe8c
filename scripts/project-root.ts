import { fileURLToPath } from 'node:url'

/** Absolute path of the project's folder. */
export const PROJECT_ROOT = fileURLToPath(new URL('..', import.meta.url))
