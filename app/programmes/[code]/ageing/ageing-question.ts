import type { AgeingMethod } from '@/shared/materials/ageing-methods'
import { commonPractice } from '@/shared/sources/provenance'
import type { Store } from '@/shared/physics/ageing-equivalence'
import { decimalTyped } from '@/shared/quantity/decimal-typed'
import type { DecimalSign } from '@/shared/quantity/notation'
import { formatQuantity } from '@/shared/quantity/format'

/** What is asked on the page of ageings, as it stands in the address. */
export interface AgeingQuestion {
  readonly store: Store
  readonly wantedMonths: number
  /** A conditioning of one's own beside the listed ones. */
  readonly own: AgeingMethod | undefined
}

export interface AskedAgeing {
  readonly question: AgeingQuestion | undefined
  readonly problems: Readonly<Record<string, string>>
}

/** A store whose temperature or humidity the programme does not specify. */
const USUAL = { temperatureC: 25, relativeHumidityPct: 60, months: 12 }

type Specified = { readonly temperatureC?: number | undefined; readonly months?: number | undefined }

/** Reads the question; what the address leaves out is as the programme specifies, or as is usual. */
export function ageingQuestionFrom(
  given: Readonly<Record<string, string | undefined>>,
  specified: Specified,
  decimal: DecimalSign,
): AskedAgeing {
  const problems: Record<string, string> = {}
  const read = (name: string, otherwise: number, [min, max]: readonly [number, number], message: string) => {
    const typed = given[name]?.trim()
    const value = typed ? (decimalTyped(typed, decimal) ?? NaN) : otherwise
    if (!(value >= min && value <= max)) problems[name] = message
    return value
  }
  const isBlank = (name: string) => !given[name]?.trim()
  const temperatureC = read('store', specified.temperatureC ?? USUAL.temperatureC, [-40, 125], TEMPERATURE)
  const relativeHumidityPct = read('humidity', USUAL.relativeHumidityPct, [1, 100], HUMIDITY)
  const wantedMonths = read('months', specified.months || USUAL.months, [0, 1200], MONTHS)
  const hours = read('hours', 0, [0, 10_000], HOURS)
  const ownC = read('at', 155, [-40, 250], OWN_TEMPERATURE)
  const ownRh = read('rh', 1, [1, 100], HUMIDITY)
  if (!isBlank('at') && isBlank('hours')) problems['hours'] ??= 'Say for how many hours.'
  if (Object.keys(problems).length > 0) return { question: undefined, problems }
  const dry = isBlank('rh')
  const own =
    hours > 0
      ? ({
          label: `Your own: ${formatQuantity(hours, 'h')} at ${formatQuantity(ownC, '°C')}${dry ? ', dry' : `, ${ownRh} % RH`}`,
          acts: dry ? 'dry heat' : 'damp heat',
          temperatureC: ownC,
          ...(!dry && { relativeHumidityPct: ownRh }),
          hours,
          from: commonPractice('as typed in'),
        } satisfies AgeingMethod)
      : undefined
  return { question: { store: { temperatureC, relativeHumidityPct }, wantedMonths, own }, problems }
}

const TEMPERATURE = 'A store lies between −40 and 125 °C.'
const OWN_TEMPERATURE = 'An ageing lies between −40 and 250 °C.'
const HUMIDITY = 'A relative humidity lies between 1 and 100 %.'
const MONTHS = 'Between 0 and 1200 months.'
const HOURS = 'Between 0 and 10 000 hours.'
