import type { ProgrammeState } from '@/shared/gate/programme-state'
import { CONCESSION_STANDINGS, concessionStatus } from '@/shared/gate/concession'
import type { Judgement } from '@/shared/gate/judgement'
import { dueStatus } from '@/shared/instruments/due-status'
import { instrumentUses } from '@/shared/instruments/instrument-uses'
import type { Department } from '@/shared/plan/department'
import { addDays } from '@/shared/quantity/calendar'
import type { Facts } from '@/shared/rules/facts'
import { lotClocks } from '@/shared/storage/lot-clocks'
import { checksDue } from './checks-due'
import type { DeskEntry } from './desk-entry'

/** What lies further ahead is nobody's business yet. */
const AHEAD_DAYS = 30

/** What falls due within the next thirty days, for the department that sees to it. */
export const comingDue = (
  department: Department,
  state: ProgrammeState,
  judgement: Judgement,
): DeskEntry[] => [
  ...(department === 'production' ? [...checksAhead(state.facts), ...lotsToSolder(state.facts)] : []),
  ...(department === 'quality' ? calibrations(state.facts) : []),
  ...(department === 'production' ? [] : concessionsEnding(department, state, judgement)),
]

const isAhead = (day: string, today: string): boolean => today < day && day <= addDays(today, AHEAD_DAYS)

const checksAhead = (facts: Facts): DeskEntry[] =>
  checksDue(facts)
    .filter(({ dueOn }) => isAhead(dueOn, facts.today))
    .map(({ log, subject, dueOn }) => ({
      bearing: 'coming due',
      verb: 'check',
      message: subject,
      department: 'production',
      dueOn,
      place: { kind: 'log', log },
    }))

const lotsToSolder = (facts: Facts): DeskEntry[] =>
  (lotClocks(facts) ?? []).flatMap(({ lot, solderBy }) =>
    solderBy !== undefined && isAhead(solderBy, facts.today)
      ? [
          {
            bearing: 'coming due' as const,
            verb: 'solder or test again' as const,
            message: `Lot ${lot.code}, ${lot.part}`,
            department: 'production' as const,
            dueOn: solderBy,
            place: { kind: 'lot' as const, lot: lot.code },
          },
        ]
      : [],
  )

/** Of the instruments that the programme's readings rest on. */
const calibrations = ({ records, today }: Facts): DeskEntry[] =>
  instrumentUses(records)
    .map(({ instrument }) => instrument)
    .filter((instrument) => ['overdue', 'due soon'].includes(dueStatus(instrument, today)))
    .map(({ tag, measures, dueOn }) => ({
      bearing: 'coming due',
      verb: 'calibrate',
      message: `Instrument ${tag}, ${measures}`,
      department: 'quality',
      dueOn,
      place: { kind: 'instruments' },
    }))

const concessionsEnding = (
  department: Department,
  { concessions, facts }: ProgrammeState,
  { findings }: Judgement,
): DeskEntry[] =>
  concessions.flatMap((concession) => {
    const { number, untilOn, why } = concession
    const { lets } = CONCESSION_STANDINGS[concessionStatus(concession, findings.get(concession.rule), facts)]
    if (!lets || untilOn === null || !(untilOn === facts.today || isAhead(untilOn, facts.today))) return []
    return [
      {
        bearing: 'coming due' as const,
        verb: 'renew' as const,
        message: `Concession ${number} ends: ${why}`,
        department,
        dueOn: untilOn,
        place: { kind: 'concession' as const, number },
      },
    ]
  })
