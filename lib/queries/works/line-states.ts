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

/** A log as it stands this moment. */
export interface LogState extends LogInPlace {
  readonly machine: string
  /** The log with its newest batch alone. */
  readonly latest: Log
  readonly against: readonly ReadingAgainst[]
  readonly due: ReadingDue | undefined
  /** Signals without a cause, in the programme that has most of them. */
  readonly openSignals: number
}

export interface MachineState extends MachineInPlace {
  readonly states: readonly LogState[]
}

export interface LineState extends LineInPlace {
  readonly stated: readonly JudgedProgramme[]
  readonly machineStates: readonly MachineState[]
}

/** Each line with its last readings against the windows of the programmes that state it; a bounded number of statements. */
export async function readLineStates(code?: string, now = new Date()): Promise<LineState[]> {
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
            now,
          }),
        ),
      })),
    }
  })
}

interface Around {
  readonly readings: Readings
  readonly programmes: readonly JudgedProgramme[]
  readonly now: Date
}

function stateOf(
  line: string,
  machine: string,
  log: LogInPlace,
  { readings, programmes, now }: Around,
): LogState {
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
    due: readingDue(log.newest?.at.getTime(), log.everyH, now.getTime()),
    openSignals: Math.max(0, ...programmes.map(({ state }) => openOf(state.facts, log.id))),
  }
}

const openOf = (facts: JudgedProgramme['state']['facts'], logId: string): number =>
  openLogSignals(facts).find(({ log }) => log.id === logId)?.open ?? 0
