import './generate.mjs'

/**
 * `npm run restore -- FILE`: puts a backup into the empty place that this folder's settings name, and verifies it. Ends
 * with 0 when it is there and whole, 1 when it is there and broken as it was when backed up, 2 when nothing was restored.
 */
if (process.exitCode) process.exit(2)
const { join, resolve } = await import('node:path')
const { restoreBackup } = await import('@/lib/backup/restore-backup')
const { PROJECT_ROOT } = await import('@/scripts/project-root')
const { say } = await import('@/scripts/progress')
const { verifyTrails } = await import('@/scripts/verify-installation')
const { StartRefused } = await import('@/lib/settings/start-refused')
const { notDone, withNewPlace } = await import('@/scripts/with-installation')

const [file] = process.argv.slice(2)
try {
  if (!file) throw new StartRefused('Name the file to restore.')
  process.exitCode = await withNewPlace(async ({ url, dataFolder }) => {
    const { files, isOfThisVersion } = await restoreBackup(resolve(file), {
      url,
      evidence: join(dataFolder, 'evidence'),
      migrations: join(PROJECT_ROOT, 'prisma', 'migrations'),
    })
    say(`Restored, with ${files} files.`)
    if (isOfThisVersion) return verifyTrails(url, [])
    say('It is of an earlier version, which the next start brings up to date. Run npm run verify after it.')
    return 0
  })
} catch (error) {
  say(`Nothing was restored: ${notDone(error)}`)
  process.exitCode = 2
}
