/** Starts the thread that reads workbooks: Node runs it as it is, and it brings what reads TypeScript. */
import { register } from 'tsx/esm/api'

register()
await import('./workbook-worker.ts')
