import { spawn } from 'node:child_process'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { StartRefused } from '@/lib/settings/start-refused'
import { PROJECT_ROOT } from '@/scripts/project-root'

/** The web framework's command line. */
export const NEXT = join(
  dirname(createRequire(import.meta.url).resolve('next/package.json')),
  'dist',
  'bin',
  'next',
)

export interface QuietRun {
  signal: AbortSignal
  env?: Record<string, string>
}

/** Runs a program of Node's to its end, in silence; what it printed is in the error when it fails. */
export function runQuietly(args: readonly string[], { signal, env = {} }: QuietRun): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, {
      cwd: PROJECT_ROOT,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      detached: process.platform !== 'win32',
      signal,
      killSignal: 'SIGTERM',
    })
    let printed = ''
    for (const output of [child.stdout, child.stderr]) output.on('data', (text) => (printed += String(text)))
    child.once('error', reject)
    child.once('close', (code, ending) => {
      if (code === 0) resolve()
      else reject(new StartRefused(`${printed.trim()}\n\n${args.join(' ')} failed (${code ?? ending}).`))
    })
  })
}
