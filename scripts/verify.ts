import './generate.mjs'

/**
 * `npm run verify`: verifies the trails of the installation that this folder's settings name, with the rows
 * and files that their entries speak of. `npm run verify -- LX-41 PX-12` verifies those programmes alone.
 * Reads only. Ends with 0 when all are whole, 1 when one is broken, 2 when something could not be checked.
 */
if (process.exitCode) process.exit(2)
const { verifyInstallation } = await import('@/scripts/verify-installation')
process.exitCode = await verifyInstallation(process.argv.slice(2))
