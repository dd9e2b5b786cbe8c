import { database } from '@/lib/db/client'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { loadReadings } from '@/lib/programme/readings-cache'
import { readLines, type LineInPlace, type LogInPlace, type MachineInPlace } from '@/lib/queries/works/lines'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'
import { works } from '@/lib/settings/works'
import { openLogSignals } from '@/shared/charts/open-signals'
import { latestAgainst, type ReadingAgainst } from '@/shared/logs/latest-reading'
import { readingDue, type ReadingDue } from '@/shared/logs/reading-due'
import type { Log } from '@/shared/records/log'
import { NO_READINGS, type Readings } from '@/shared/records/readings'

/** A log as it stands until somebody records something. */
export interface LogAsRead extends LogInPlace {
  readonly machine: string
  /** The log with its newest batch alone. */
  readonly latest: Log
  readonly against: readonly ReadingAgainst[]
  /** Signals without a cause, in the programme that has most of them. */
  readonly openSignals: number
}

/** A log as it stands this moment. */
export interface LogState extends LogAsRead {
  readonly due: ReadingDue | undefined
}

interface MachineOf<State> extends MachineInPlace {
  readonly states: readonly State[]
}

interface LineOf<State> extends LineInPlace {
  readonly stated: readonly JudgedProgramme[]
  readonly machineStates: readonly MachineOf<State>[]
}

export type MachineState = MachineOf<LogState>
export type LineAsRead = LineOf<LogAsRead>
export type LineState = LineOf<LogState>

/** Each line with its last readings against the windows of the programmes that state it; a bounded number of statements. */
export const readLineStates = async (code?: string, now = new Date()): Promise<LineState[]> =>
  (await readLinesAgainst(code, now)).map((line) => withDue(line, now))

/** The same line with what is due on it. */
export const withDue = (line: LineAsRead, now: Date): LineState => ({
  ...line,
  machineStates: line.machineStates.map((machine) => ({
    ...machine,
    states: machine.states.map((log) => ({
      ...log,
      due: readingDue(log.newest?.at.getTime(), log.everyH, now.getTime()),
    })),
  })),
})

/** What only a new entry in a trail, or a new day, makes another. */
export async function readLinesAgainst(code: string | undefined, now: Date): Promise<LineAsRead[]> {
  const lines = await readLines(code)
  const logs = lines.flatMap(({ machines }) => machines.flatMap((machine) => machine.logs))
  const [judged, readings] = await Promise.all([
    programmesAtWork(
      [...lines.flatMap(({ programmes }) => programmes), ...logs.flatMap(({ onlyForId }) => onlyForId ?? [])],
      now,
    ),
    loadReadings(
      database(),
      logs.flatMap(({ id, newest }) =>
        newest ? [{ id: newest.batch, trailId: '', lotTestId: null, logId: id }] : [],
      ),
    ),
  ])
  return lines.map((line) => {
    const stated = line.programmes.flatMap((id) => judged.get(id) ?? [])
    return {
      ...line,
      stated,
      machineStates: line.machines.map((machine) => ({
        ...machine,
        states: machine.logs.map((log) =>
          stateOf(line.code, machine.code, log, {
            readings: log.newest ? readings.ofLog(log.id) : NO_READINGS,
            programmes: log.onlyForId ? [judged.get(log.onlyForId)].flatMap((one) => one ?? []) : stated,
          }),
        ),
      })),
    }
  })
}

interface Around {
  readonly readings: Readings
  readonly programmes: readonly JudgedProgramme[]
}

function stateOf(
  line: string,
  machine: string,
  log: LogInPlace,
  { readings, programmes }: Around,
): LogAsRead {
  const latest: Log = {
    id: log.id,
    code: log.name,
    characteristic: log.characteristic,
    timeZone: works().timeZone,
    line,
    machine,
    instrumentId: log.instrumentId,
    readings,
  }
  return {
    ...log,
    machine,
    latest,
    against: latestAgainst(
      latest,
      programmes.map(({ state }) => ({ programme: state.programme.code, facts: state.facts })),
    ),
    openSignals: Math.max(0, ...programmes.map(({ state }) => openOf(state.facts, log.id))),
  }
}

const openOf = (facts: JudgedProgramme['state']['facts'], logId: string): number =>
  openLogSignals(facts).find(({ log }) => log.id === logId)?.open ?? 0
