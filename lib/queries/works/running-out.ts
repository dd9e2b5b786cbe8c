import { readInstruments } from '@/lib/queries/instruments'
import { inForce, readTraining, readValidMax } from '@/lib/queries/people-of-the-works'
import { readStore } from '@/lib/queries/works/store'
import { dueStatus } from '@/shared/instruments/due-status'
import { addDays } from '@/shared/quantity/calendar'
import { NOTICE_DAYS } from '@/shared/training/competence'
import { runningOut, trainingMatrix } from '@/shared/training/training-matrix'

type Ends =
  | { readonly kind: 'calibration'; readonly tag: string }
  | { readonly kind: 'training'; readonly name: string; readonly skill: string }
  | { readonly kind: 'lot'; readonly code: string; readonly part: string }

/** Something of the works that is good until a day. */
export type Ending = Ends & { readonly on: string }

/** What of the works runs out of time: calibrations, training, lots in the store; the nearest first. */
export async function readRunningOut(today: string): Promise<Ending[]> {
  const [instruments, training, validMax, store] = await Promise.all([
    readInstruments(),
    readTraining(),
    readValidMax(),
    readStore(),
  ])
  const endings: Ending[] = [
    ...instruments
      .filter((instrument) => ['overdue', 'due soon'].includes(dueStatus(instrument, today)))
      .map(({ tag, dueOn }) => ({ kind: 'calibration' as const, on: dueOn, tag })),
    ...runningOut(trainingMatrix(inForce(training), today, validMax.value)).map(({ name, skill, until }) => ({
      kind: 'training' as const,
      on: until,
      name,
      skill,
    })),
    ...store.flatMap(({ code, part, expiresOn }) =>
      expiresOn !== null && expiresOn <= addDays(today, NOTICE_DAYS)
        ? [{ kind: 'lot' as const, on: expiresOn, code, part }]
        : [],
    ),
  ]
  return endings.sort((one, other) => (one.on < other.on ? -1 : 1))
}
