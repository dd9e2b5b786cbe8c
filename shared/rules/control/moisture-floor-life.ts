import { FLOOR_LIFE_AT_MOST_C, floorLifeOf } from '@/shared/materials/moisture-sensitivity'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { floorLifeGuard } from '@/shared/plan/limits/guard-bands'
import { moistureSensitiveParts } from '@/shared/plan/parameters/control-handling'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { measure } from '@/shared/rules/measure'

type Exposure = RecordOf<'moisture-exposure'>

export const moistureFloorLifeRule = rule({
  id: 'moisture-floor-life',
  title: 'Moisture-sensitive parts within their floor life',
  why: 'Plastic packages drink moisture from the air; soldering heat turns it to steam, which cracks them inside where nobody sees it.',
  formula: 'time out of the bag · factor of the climate ≤ floor life of the level',
  stage: 'control',
  version: 3,
  reads: {
    sensitive: optional(moistureSensitiveParts),
    surfaceMount: optional(surfaceMountJoints),
    guard: floorLifeGuard,
    exposures: recordsOf('moisture-exposure', 'moisture exposures'),
  },
  judge({ sensitive, surfaceMount, guard, exposures }): Judged {
    if (exposures.length === 0) {
      if (sensitive === false)
        return notApplicable('No moisture-sensitive part is soldered in this programme.')
      if (sensitive === undefined && surfaceMount === 0)
        return notApplicable(
          'The board has no surface-mount joints, and no moisture-sensitive part is named.',
        )
      return sensitive === undefined
        ? undetermined(
            `${surfaceMount === undefined ? 'It is not specified whether there are surface-mount joints' : 'Surface-mount joints are specified'}, and nothing says whether any part is moisture-sensitive.`,
            [moistureSensitiveParts.label],
          )
        : undetermined('No moisture exposure is recorded yet.', [
            'an exposure for each opened pack of sensitive parts',
          ])
    }
    return judgedByParts({
      parts: exposures.map((exposure) => judgeExposure(exposure, guard.value / 100)),
      noun: 'packs',
      limit: `Soldered within the floor life of the part's level, on a floor of at most ${FLOOR_LIFE_AT_MOST_C} °C and the level's humidity (J-STD-033).`,
      working: [],
      sources: [floorLifeOf(exposures[0]!.level).source, sourceOf(guard)],
      cautions: [
        'Baking ovens are hot, and tape and reels may not stand the heat: follow the part maker’s schedule.',
      ],
    })
  },
})

function judgeExposure(
  { part, openedOn, level, hoursOpen, hottestC, dampestPct, baked, labelHours }: Exposure,
  guardShare: number,
): Part {
  const { hours: ofLevel, atMaxRelativeHumidityPct } = floorLifeOf(level)
  const hours = level === '6' ? labelHours : ofLevel
  const named = {
    subject: `${part}, opened ${openedOn}`,
    about: { part, openedOn },
    measured: {
      level,
      baked,
      open: measure(hoursOpen, 'h'),
      hottest: measure(hottestC, '°C'),
      dampest: measure(dampestPct, '% RH'),
    },
  }
  const bake = {
    message: 'Bake to the part maker’s schedule before soldering, record it, and count the hours again.',
  }
  const harsher = hottestC > FLOOR_LIFE_AT_MOST_C || dampestPct > atMaxRelativeHumidityPct
  if (level === '6' && baked === 'no')
    return {
      ...named,
      verdict: 'fails',
      found: 'level 6 is baked before every use, and was not.',
      remedy: bake,
    }
  if (hours === undefined)
    return {
      ...named,
      verdict: 'undetermined',
      found: 'baked before use, but the time to reflow that its label gives is not recorded.',
      remedy: { message: 'Record the hours of the label with the exposure.' },
    }
  if (hours === null)
    return harsher
      ? {
          ...named,
          verdict: 'undetermined',
          found: `the floor reached ${hottestC} °C and ${dampestPct} %: no published life covers that.`,
          remedy: bake,
        }
      : { ...named, verdict: 'meets', found: 'level 1 has no limit in hours.' }
  const margin: Margin = {
    found: hoursOpen,
    limit: hours,
    unit: 'h',
    direction: 'at most',
    guardBand: guardShare * hours,
  }
  const verdict = verdictOn(margin)
  if (verdict !== 'fails' && harsher)
    return {
      ...named,
      verdict: 'undetermined',
      found: `open for ${formatQuantity(hoursOpen, 'h')}, but the floor reached ${hottestC} °C and ${dampestPct} %: no published life covers that.`,
      margin,
      remedy: bake,
    }
  return {
    ...named,
    verdict,
    found: `open for ${formatQuantity(hoursOpen, 'h')} of ${formatQuantity(hours, 'h')} (level ${level}).`,
    margin,
    ...(verdict === 'fails' && { remedy: bake }),
  }
}
