import { redact } from '@/lib/log/redact'

const LEVELS = ['debug', 'info', 'warn', 'error', 'silent'] as const

type Level = (typeof LEVELS)[number]
type Fields = Record<string, unknown>

/** Reads the level itself: a log must work even where the settings are what is wrong. */
function isWanted(level: Level): boolean {
  const min = LEVELS.indexOf((process.env.LOG_LEVEL ?? 'info') as Level)
  return LEVELS.indexOf(level) >= (min < 0 ? LEVELS.indexOf('info') : min)
}

function write(level: Exclude<Level, 'silent'>, message: string, fields: Fields = {}): void {
  if (!isWanted(level)) return
  const line = {
    time: new Date().toISOString(),
    level,
    message: redact(message),
    ...(redact(fields) as Fields),
  }
  process.stderr.write(`${JSON.stringify(line)}\n`)
}

/** One JSON object a line on the error output, at or above LOG_LEVEL, without secrets. */
export const log = {
  debug: (message: string, fields?: Fields) => write('debug', message, fields),
  info: (message: string, fields?: Fields) => write('info', message, fields),
  warn: (message: string, fields?: Fields) => write('warn', message, fields),
  error: (message: string, fields?: Fields) => write('error', message, fields),
}
