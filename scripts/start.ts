import './generate.mjs'

/** `npm start`: everything from settings to a served page. The client must be generated before it is imported. */
if (process.exitCode) process.exit()
const { runApp } = await import('@/scripts/run-app')
await runApp('start')
