import { spawn, type ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

export interface Program {
  process: ChildProcess
  pid: number
  /** Everything it has printed so far, on both outputs. */
  printed(): string
  /** The first line, from now on or earlier, that matches; rejects when the program ends without one. */
  line(pattern: RegExp): Promise<string>
  /** Its exit code, or the signal that ended it. */
  ended: Promise<number | NodeJS.Signals>
}

/** Runs a script of this project as a program of its own, in a process group of its own. */
export function runScript(
  path: string,
  args: readonly string[] = [],
  env: Record<string, string> = {},
): Program {
  const child = spawn(process.execPath, ['--import', 'tsx', path, ...args], {
    cwd: ROOT,
    detached: true,
    env: { ...process.env, ...env },
    stdio: ['pipe', 'pipe', 'pipe'],
  })
  const lines: string[] = []
  const waiting = new Set<() => void>()
  for (const output of [child.stdout, child.stderr]) {
    createInterface({ input: output }).on('line', (text) => {
      lines.push(text)
      for (const look of waiting) look()
    })
  }
  const ended = once(child, 'close').then(([code, signal]) => (code ?? signal) as number | NodeJS.Signals)
  return {
    process: child,
    pid: child.pid ?? 0,
    printed: () => lines.join('\n'),
    ended,
    line: (pattern) =>
      new Promise((resolve, reject) => {
        const look = () => {
          const found = lines.find((text) => pattern.test(text))
          if (found === undefined) return
          waiting.delete(look)
          resolve(found)
        }
        waiting.add(look)
        look()
        void ended.then((end) =>
          reject(new Error(`${path} ended (${end}) without a line ${pattern}:\n${lines.join('\n')}`)),
        )
      }),
  }
}
