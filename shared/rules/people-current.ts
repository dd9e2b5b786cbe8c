import type { GoverningRequirement } from '@/shared/plan/requirement'
import { addMonths, daysBetween } from '@/shared/quantity/calendar'
import { SKILLS, type Skill } from '@/shared/records/kinds/training'
import type { RecordOf } from '@/shared/records/record-kinds'
import { samePerson } from '@/shared/records/soldering-work'
import type { Judged, Part } from './finding'
import { decidingPart } from './parts'
import { governingName, sourceOf } from './governing-source'
import { count } from '@/shared/rules/measure'
import { groupedBy } from '@/shared/grouped-by'

type Training = RecordOf<'training'>

/** Work that a person did, and the day. */
export interface SkilledTask {
  readonly worker: string
  readonly skill: Skill
  readonly on: string
}

/** What is asked of people, for the limit line. */
export const peopleLimit = (validMax: GoverningRequirement): string =>
  `Each person's training current on the day of the work, and valid no longer than ${validMax.value} months (${governingName(validMax)}).`

/** How long a training is good, and how much of it is to be left after its last use. */
export interface PeopleLimits {
  readonly validMax: GoverningRequirement
  readonly notice: GoverningRequirement
}

/** Whether everyone who did something was trained for it and current on that day. Asks for one task at least. */
export function judgePeople(
  tasks: readonly SkilledTask[],
  training: readonly Training[],
  { validMax, notice }: PeopleLimits,
): Judged {
  const byWorker = certificatesBy(training, validMax.value)
  const parts = [...groupedTasks(tasks)].map(([, own]) => partOf(own, byWorker, notice.value))
  const worst = decidingPart(parts)
  if (!worst) throw new RangeError('There is no work to hold training records against.')
  const { verdict } = worst
  const nonconforming = parts.filter((part) => part.verdict === 'fails').length
  return {
    verdict,
    found:
      verdict === 'fails'
        ? `${worst.subject}: ${worst.found}${nonconforming > 1 ? ` ${nonconforming - 1} more like it.` : ''}`
        : `All ${parts.length} pairs of person and skill were current on every day of work.${verdict === 'marginal' ? ` ${worst.subject}: ${worst.found}` : ''}`,
    limit: peopleLimit(validMax),
    margin: worst.margin,
    measured: { pairs: count(parts.length), outside: count(nonconforming) },
    working: [
      {
        label: 'Deeds held against training records',
        result: `${tasks.length} tasks, ${training.length} records`,
      },
    ],
    sources: [sourceOf(validMax), sourceOf(notice)],
    remedy: worst.remedy,
    parts,
  }
}

const keyOf = (worker: string, skill: Skill): string => `${samePerson(worker)}\n${skill}`

/** Deeds by person and skill, the days ascending. */
const groupedTasks = (tasks: readonly SkilledTask[]) =>
  new Map(
    [...groupedBy(tasks, ({ worker, skill }) => keyOf(worker, skill))].map(([key, own]) => [
      key,
      { ...own[0]!, days: own.map(({ on }) => on).sort() },
    ]),
  )

interface Validity {
  readonly from: string
  readonly to: string
}

/** The days on which a training is valid: to its stated end, or sooner where the limit ends it. */
export function trainingValidity(
  { passedOn, expiresOn }: Pick<Training, 'passedOn' | 'expiresOn'>,
  maxMonths: number,
): Validity {
  const longest = addMonths(passedOn, maxMonths)
  return { from: passedOn, to: expiresOn < longest ? expiresOn : longest }
}

/** The spans in which each person's training in each skill is valid. */
const certificatesBy = (training: readonly Training[], maxMonths: number): Map<string, Validity[]> =>
  groupedBy(
    training,
    ({ worker, skill }) => keyOf(worker, skill),
    (passed) => trainingValidity(passed, maxMonths),
  )

function partOf(
  { worker, skill, days }: { worker: string; skill: Skill; days: readonly string[] },
  byWorker: ReadonlyMap<string, readonly Validity[]>,
  noticeDays: number,
): Part {
  const label = SKILLS.find(({ value }) => value === skill)?.label ?? skill
  const named = { subject: `${worker}, ${label.toLowerCase()}`, about: { worker, skill } }
  const spans = byWorker.get(keyOf(worker, skill)) ?? []
  const signedContents = (day: string): Validity | undefined =>
    spans.find(({ from, to }) => from <= day && day <= to)
  const outside = days.filter((day) => !signedContents(day))
  const first = outside[0]
  if (first !== undefined)
    return {
      ...named,
      verdict: 'fails',
      measured: {
        trained: spans.length > 0,
        firstOutside: first,
        outside: count(outside.length, 'days'),
      },
      found: `${spans.length === 0 ? 'no training is recorded' : 'certificate not current'} on ${first}${outside.length > 1 ? ` and on ${outside.length - 1} more days of work` : ''}.`,
      remedy: {
        message: `Record the training that covered ${first} if there was one; else train and examine ${worker}, and have the work of those days inspected by someone whose certificate is current.`,
      },
    }
  const last = days[days.length - 1]!
  const until = spans
    .filter(({ from, to }) => from <= last && last <= to)
    .map(({ to }) => to)
    .sort()
    .pop()!
  const left = daysBetween(last, until)
  return {
    ...named,
    measured: { daysOfWork: count(days.length, 'days') },
    verdict: left < noticeDays ? 'marginal' : 'meets',
    found: `current on all ${days.length} days of work; ${left} days were left after the last.`,
    margin: { found: left, limit: 0, unit: 'days', direction: 'at least', guardBand: noticeDays },
  }
}
