import './generate.mjs'

/** `npm run dev`: as `npm start`, but the pages are compiled as they are asked for and reload as they change. */
if (process.exitCode) process.exit()
const { runApp } = await import('@/scripts/run-app')
await runApp('dev')
