import { HOURS_PER_MONTH } from '@/shared/quantity/calendar'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import {
  coatingLeftUm,
  compoundUm,
  growthBand,
  hoursUntilLeft,
  type Coat,
} from '@/shared/physics/intermetallic'
import { freeTinMin } from '@/shared/plan/limits/finishes'
import { boardFinish, boardFinishMin, boardNickel, leadFinishes } from '@/shared/plan/parameters/finishes'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { storedCoats } from '@/shared/storage/stored-coats'
import { governingFor, valueOf } from './value-of'

/** Coatings that age alike, drawn once. */
export interface AlikeCoats {
  readonly subjects: readonly string[]
  readonly coat: Coat
  readonly months: number
}

export interface Store {
  readonly temperatureC: number
  readonly minUm: number
  /** The coating with the least left at its time first. */
  readonly coats: readonly AlikeCoats[]
}

/** The store as specified; undefined while a value is missing. */
export function storeOf(view: ProgrammeView): Store | undefined {
  const finish = valueOf(view, boardFinish)
  const boardUm = valueOf(view, boardFinishMin)
  const finishes = valueOf(view, leadFinishes)
  const boardMonths = valueOf(view, boardStorageMonths)
  const leadMonths = valueOf(view, leadStorageMonths)
  const temperatureC = valueOf(view, storageTemperature)
  if (!finish || !finishes || boardUm === undefined || temperatureC === undefined) return undefined
  if (boardMonths === undefined || leadMonths === undefined) return undefined
  const nickelUm = valueOf(view, boardNickel) ?? 0
  const stored = storedCoats({ finish, boardUm, nickelUm, finishes, boardMonths, leadMonths })
  const alike = new Map<string, AlikeCoats>()
  for (const { subject, coat, months } of stored) {
    const key = JSON.stringify([coat, months])
    alike.set(key, { subjects: [...(alike.get(key)?.subjects ?? []), subject], coat, months })
  }
  const fastest = growthBand(temperatureC).fastest
  const left = ({ coat, months }: AlikeCoats): number => leftUm(coat, fastest, months)
  return {
    temperatureC,
    minUm: governingFor(view, freeTinMin).value,
    coats: [...alike.values()].toSorted((one, other) => left(one) - left(other)),
  }
}

/** Sound coating left after some months at a growth constant, µm. */
export const leftUm = (coat: Coat, growthUm2h: number, months: number): number =>
  coatingLeftUm(coat, compoundUm(growthUm2h, months * HOURS_PER_MONTH, coat.firstUm))

/** Months until so much is left. */
export const monthsUntil = (coat: Coat, minUm: number, growthUm2h: number): number =>
  hoursUntilLeft(coat, minUm, growthUm2h) / HOURS_PER_MONTH
