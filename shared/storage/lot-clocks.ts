import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { addDays, daysBetween } from '@/shared/quantity/calendar'
import type { Lot } from '@/shared/records/lot'
import { isUsable, partKey } from '@/shared/records/lot-identity'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { lots, recordsOf } from '@/shared/rules/record-source'
import {
  passingReads,
  solderabilityResults,
  type PassingInputs,
} from '@/shared/lot-tests/solderability-results'
import { codeKey, lotsUsed, monthsAfter, monthsFor, startOfStorage, storageReads } from './storage-time'

/** How a lot in store stands: past its time it asks for a test anew, or must not be soldered at all. */
export type ClockState =
  'never tested' | 'failed its newest test' | 'past its time in store' | 'test too old' | 'in time'

/** One lot that may still be soldered, with the day by which it must be. */
export interface LotClock {
  readonly lot: Lot
  readonly startedOn: string
  /** The last day of its time in store, whatever is tested. */
  readonly storedUntil: string
  /** The day of its newest test that counts, if that was passed. */
  readonly testedOn: string | undefined
  /** The last day for which the newest test stands. */
  readonly testedUntil: string | undefined
  /** The earlier of the two; undefined while it was never tested. */
  readonly solderBy: string | undefined
  /** From today; negative once it is past. */
  readonly daysLeft: number | undefined
  readonly state: ClockState
  /** The last day on which some of it was soldered. */
  readonly lastSolderedOn: string | undefined
  /** The lot of its part that is to be used before the others. */
  readonly useFirst: boolean
  /** Days on which a lot of the same part with more time left was soldered while this one waited. */
  readonly passedOver: readonly { readonly day: string; readonly insteadLot: string }[]
}

/**
 * The storage clock of every board, coupon and component lot that is not
 * rejected, the soonest to expire first. Undefined until the specification says
 * how long boards and components may wait.
 */
export function lotClocks(facts: Facts): readonly LotClock[] | undefined {
  const inputs = inputsOf(
    {
      ...storageReads,
      ...passingReads,
      testedMax: reaffirmationAgeMax,
      lots,
      runs: recordsOf('soldering-run', 'soldering runs'),
    },
    facts,
  )
  if (!inputs) return undefined
  const { boardMonths, partMonths, lots: onFile, runs } = inputs
  const clocks = onFile.filter(isUsable).flatMap((lot) => {
    const months = monthsFor(lot, boardMonths, partMonths)
    return months === undefined ? [] : [clockOf(lot, months, inputs, facts.today)]
  })
  const used = new Map(lotsUsed(runs).map(({ code, days }) => [codeKey(code), days]))
  return clocks
    .map((clock) => {
      const same = clocks.filter(({ lot }) => samePart(lot, clock.lot))
      return {
        ...clock,
        useFirst: clock.state === 'in time' && same.length > 1 && isFirst(clock, same),
        lastSolderedOn: used.get(codeKey(clock.lot.code))?.at(-1),
        passedOver: passedOver(clock, same, used),
      }
    })
    .sort(bySolderBy)
}

type Clock = Omit<LotClock, 'useFirst' | 'passedOver' | 'lastSolderedOn'>

function clockOf(
  lot: Lot,
  months: number,
  inputs: PassingInputs & { readonly testedMax: GoverningRequirement },
  today: string,
): Clock {
  const startedOn = startOfStorage(lot)
  const storedUntil = monthsAfter(startedOn, months)
  const newest = solderabilityResults(lot, inputs).at(-1)
  const testedOn = newest?.passed ? newest.restsOn : undefined
  const testedUntil = testedOn === undefined ? undefined : addDays(testedOn, inputs.testedMax.value)
  const solderBy = testedUntil === undefined || testedUntil < storedUntil ? testedUntil : storedUntil
  return {
    lot,
    startedOn,
    storedUntil,
    testedOn,
    testedUntil,
    solderBy,
    daysLeft: solderBy === undefined ? undefined : daysBetween(today, solderBy),
    state:
      storedUntil < today
        ? 'past its time in store'
        : testedUntil === undefined
          ? newest
            ? 'failed its newest test'
            : 'never tested'
          : testedUntil < today
            ? 'test too old'
            : 'in time',
  }
}

const samePart = (one: Lot, other: Lot): boolean =>
  one.kind === other.kind && partKey(one.part) === partKey(other.part)

/** Without a test a lot has no day to expire; it comes after those that have. */
const dayOf = ({ solderBy }: Clock): string => solderBy ?? '9999-12-31'
const bySolderBy = (one: Clock, other: Clock): number =>
  dayOf(one) === dayOf(other)
    ? one.lot.code.localeCompare(other.lot.code)
    : dayOf(one) < dayOf(other)
      ? -1
      : 1

const isFirst = (clock: Clock, same: readonly Clock[]): boolean =>
  same.filter(({ state }) => state === 'in time').sort(bySolderBy)[0] === clock

function passedOver(
  clock: Clock,
  same: readonly Clock[],
  used: ReadonlyMap<string, readonly string[]>,
): LotClock['passedOver'] {
  const daysOf = ({ lot }: Clock): readonly string[] => used.get(codeKey(lot.code)) ?? []
  const last = daysOf(clock).at(-1)
  return same
    .filter((other) => other !== clock && bySolderBy(clock, other) < 0 && clock.solderBy !== undefined)
    .flatMap((other) =>
      daysOf(other)
        .filter(
          (day) => clock.lot.receivedOn <= day && day <= dayOf(clock) && (last === undefined || day < last),
        )
        .map((day) => ({ day, insteadLot: other.lot.code })),
    )
    .sort((one, other) => (one.day < other.day ? -1 : 1))
}
