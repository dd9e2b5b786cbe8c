import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'

/** Whether a process with this number exists, whoever owns it. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}

/**
 * When a process began, as its system tells it. A process number is given out again after a while; number
 * and beginning together name one process. Undefined where the system does not say.
 */
export function beginningOf(pid: number): string | undefined {
  try {
    if (process.platform === 'linux') return linuxBeginning(pid)
    if (process.platform === 'win32') return undefined
    return execFileSync('ps', ['-o', 'lstart=', '-p', String(pid)], { encoding: 'utf8' }).trim()
  } catch {
    return undefined
  }
}

/** The command line of a process, or undefined where the system does not say. */
export function commandLineOf(pid: number): string | undefined {
  try {
    if (process.platform === 'linux')
      return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim()
    if (process.platform === 'win32') return undefined
    return execFileSync('ps', ['-o', 'command=', '-p', String(pid)], { encoding: 'utf8' }).trim()
  } catch {
    return undefined
  }
}

/** The boot, and within it the clock tick (field 22 of /proc/<pid>/stat; the name before it may hold spaces). */
function linuxBeginning(pid: number): string | undefined {
  const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8')
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ')
  const hasEnded = fields[0] === 'Z'
  return hasEnded ? undefined : `${boot} ${fields[19]}`
}
