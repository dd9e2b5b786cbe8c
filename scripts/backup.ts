import './generate.mjs'

/**
 * `npm run backup -- FILE`: writes the installation that this folder's settings name into one new file, while it runs or
 * not. Ends with 0 when it is written, 2 when it could not be.
 */
if (process.exitCode) process.exit(2)
const { join, resolve } = await import('node:path')
const { writeBackup } = await import('@/lib/backup/write-backup')
const { StartRefused } = await import('@/lib/settings/start-refused')
const { notDone, withInstallation } = await import('@/scripts/with-installation')
const { say } = await import('@/scripts/progress')

const [file] = process.argv.slice(2)
try {
  if (!file) throw new StartRefused('Name the file to be made.')
  const path = resolve(file)
  const { rows, files } = await withInstallation(({ url, dataFolder }) =>
    writeBackup({ url, evidence: join(dataFolder, 'evidence') }, path),
  )
  const rowsInAll = Object.values(rows).reduce((sum, count) => sum + count, 0)
  say(
    `${path}: ${rowsInAll} rows and ${files} files. It holds all that people wrote: keep it where few can read.`,
  )
} catch (error) {
  say(`Nothing was written: ${notDone(error)}`)
  process.exitCode = 2
}
