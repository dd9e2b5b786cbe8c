import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { readIfThere } from '@/lib/settings/read-if-there'

/** Whether a process with this number runs, whoever owns it. One that has ended but was not yet taken leave of does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EPERM') return false
  }
  return process.platform !== 'linux' || linuxStatus(pid)?.state !== 'Z'
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

/** The boot, and within it the clock tick. */
function linuxBeginning(pid: number): string | undefined {
  const status = linuxStatus(pid)
  return (
    status && `${readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim()} ${status.beginningTicks}`
  )
}

/** Fields 3 and 22 of /proc/<pid>/stat; the name before them may hold spaces and brackets. */
function linuxStatus(pid: number): { state: string; beginningTicks: string } | undefined {
  const stat = readIfThere(`/proc/${pid}/stat`)
  const fields = stat?.slice(stat.lastIndexOf(')') + 2).split(' ')
  return fields && { state: fields[0] ?? '', beginningTicks: fields[19] ?? '' }
}
