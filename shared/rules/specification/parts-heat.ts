import { solderExposures, type SolderExposure } from '@/shared/plan/parameters/laminate'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { formatQuantity } from '@/shared/quantity/format'
import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { undetermined, verdictOn, worstVerdict, type Margin, type Part } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, tightest } from '@/shared/rules/parts'
import { partsOfTheWorks } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { jointsOf } from '@/shared/works/part-kind'
import { partsOnBoard, type OnBoard } from '@/shared/works/parts-on-board'
import { NO_PARTS_LIST } from './parts-list-counted'

const SOURCES = [
  commonPractice('A part bears soldering heat up to a temperature for a time, as its maker states it'),
  fromMemory('IEC 60068-2-20, test Tb: resistance to soldering heat, a bath of 260 °C for 10 s'),
]

/** Heat that reaches the leads, by the way of soldering that brings it. */
const REACHES: Readonly<Record<SolderExposure['kind'], 'machine' | 'hand' | 'all' | 'none'>> = {
  levelling: 'none',
  dip: 'machine',
  wave: 'machine',
  selective: 'machine',
  reflow: 'machine',
  hand: 'hand',
  rework: 'all',
}

export const partsHeat = rule({
  id: 'parts-heat',
  title: 'Soldering heat the parts bear',
  why: 'A part heated beyond what its maker states may measure well afterwards and fail early: seals open, bodies soften, plates come loose from their leads.',
  formula:
    'temperature of each soldering ≤ temperature the part bears; its time ≤ the time the part bears it for',
  stage: 'specification',
  version: 1,
  reads: {
    list: optional(partsList),
    parts: partsOfTheWorks,
    exposures: optional(solderExposures),
  },
  judge({ list, parts, exposures }) {
    if (!list) return notApplicable(NO_PARTS_LIST)
    const soldered = partsOnBoard(list, parts).filter(
      ({ row, part }) => row.soldered !== undefined && part && jointsOf(part.values.kind) !== undefined,
    )
    if (soldered.length === 0) return notApplicable('No described part of the list is soldered to the board.')
    if (!exposures)
      return undetermined('It is not specified what soldering heat there is.', [solderExposures.label])
    return judgedByParts({
      parts: soldered.map((entry) => judgePart(entry, exposures)),
      noun: 'parts',
      limit: 'No hotter, and no longer at once, than each part bears.',
      working: [],
      sources: SOURCES,
      notes: ['Solderings are held against the part one by one; none adds to the next.'],
    })
  },
})

function judgePart({ row, part }: OnBoard, exposures: readonly SolderExposure[]): Part {
  const subject = row.references === undefined ? row.part : `${row.part} (${row.references})`
  const named = { subject, about: { part: row.part, references: row.references ?? '' } }
  const { heatMaxC, heatMaxS } = part?.values ?? {}
  if (heatMaxC === undefined || heatMaxS === undefined)
    return {
      ...named,
      verdict: 'undetermined',
      found: 'the part says no heat that it bears.',
      remedy: { message: `Revise part ${row.part} with the heat that its maker states.` },
    }
  const reached = exposures.filter(({ kind }) => REACHES[kind] === 'all' || REACHES[kind] === row.soldered)
  const judged = reached.map((exposure) => {
    const [hot, long]: [Margin, Margin] = [
      margin(exposure.temperatureC, heatMaxC, '°C'),
      margin(exposure.seconds, heatMaxS, 's'),
    ]
    return {
      exposure,
      margin: tightest(hot, long),
      verdict: worstVerdict([verdictOn(hot), verdictOn(long)]),
    }
  })
  const worst = judged.reduce<(typeof judged)[number] | undefined>(
    (before, one) =>
      !before || (one.verdict === 'fails' && before.verdict !== 'fails') || isTighter(one, before)
        ? one
        : before,
    undefined,
  )
  if (!worst)
    return {
      ...named,
      verdict: 'undetermined',
      found: `no soldering by ${row.soldered ?? 'any way'} is listed.`,
      remedy: { message: `List the soldering by ${row.soldered ?? 'any way'} among the solder exposures.` },
    }
  const { exposure } = worst
  return {
    ...named,
    verdict: worst.verdict,
    margin: worst.margin,
    measured: {
      step: exposure.step,
      temperature: measure(exposure.temperatureC, '°C'),
      time: measure(exposure.seconds, 's'),
      bornTemperature: measure(heatMaxC, '°C'),
      bornTime: measure(heatMaxS, 's'),
    },
    found: `${exposure.step}: ${formatQuantity(exposure.temperatureC, '°C')} for ${formatQuantity(exposure.seconds, 's')}; the part bears ${formatQuantity(heatMaxC, '°C')} for ${formatQuantity(heatMaxS, 's')}.`,
    ...(worst.verdict === 'fails' && {
      remedy: { message: 'Solder cooler or shorter, by hand with a heat sink, or choose another part.' },
    }),
  }
}

// What is specified may equal what the part bears.
const margin = (found: number, limit: number, unit: '°C' | 's'): Margin => ({
  found,
  limit,
  unit,
  direction: 'at most',
  guardBand: 0,
})

interface JudgedExposure {
  readonly verdict: string
  readonly margin: Margin
}
const isTighter = (one: JudgedExposure, before: JudgedExposure): boolean =>
  one.verdict === before.verdict && tightest(before.margin, one.margin) === one.margin
