import { FLOOR_LIFE_AT_MOST_C, floorLifeOf } from '@/shared/materials/moisture-sensitivity'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'

type Exposure = RecordOf<'moisture-exposure'>

const GUARD_SHARE = 0.1

export const moistureFloorLifeRule = rule({
  id: 'moisture-floor-life',
  title: 'Moisture-sensitive parts within their floor life',
  why: 'Plastic packages drink moisture from the air; soldering heat turns it to steam, which cracks them inside where nobody sees it.',
  stage: 'control',
  version: 1,
  reads: { exposures: recordsOf('moisture-exposure', 'moisture exposures') },
  judge({ exposures }): Judged {
    if (exposures.length === 0)
      return notApplicable(
        'No moisture exposure is recorded: record one for each opened pack of sensitive parts.',
      )
    return judgedByParts({
      parts: exposures.map(judgeExposure),
      noun: 'packs',
      limit: `Soldered within the floor life of the part's level, on a floor of at most ${FLOOR_LIFE_AT_MOST_C} °C and the level's humidity (J-STD-033).`,
      working: [],
      sources: [floorLifeOf(exposures[0]!.level).source],
      cautions: [
        'Baking ovens are hot, and tape and reels may not stand the heat: follow the part maker’s schedule.',
      ],
    })
  },
})

function judgeExposure({ part, openedOn, level, hoursOpen, hottestC, dampestPct, baked }: Exposure): Part {
  const { hours, atMostRelativeHumidityPct } = floorLifeOf(level)
  const subject = `${part}, opened ${openedOn}`
  const bake = {
    says: 'Bake to the part maker’s schedule before soldering, record it, and count the hours anew.',
  }
  const harsher = hottestC > FLOOR_LIFE_AT_MOST_C || dampestPct > atMostRelativeHumidityPct
  if (level === '6' && baked === 'no')
    return {
      subject,
      verdict: 'fails',
      found: 'level 6 is baked before every use, and was not.',
      remedy: bake,
    }
  if (hours === null || level === '6')
    return {
      subject,
      verdict: harsher && hours === null ? 'undetermined' : 'meets',
      found:
        harsher && hours === null
          ? `the floor reached ${hottestC} °C and ${dampestPct} %: no published life covers that.`
          : level === '6'
            ? 'baked before use; the time to reflow is on its label.'
            : 'level 1 has no limit in hours.',
      ...(harsher && hours === null && { remedy: bake }),
    }
  const margin: Margin = {
    found: hoursOpen,
    limit: hours,
    unit: 'h',
    direction: 'at most',
    guardBand: GUARD_SHARE * hours,
  }
  const verdict = verdictOn(margin)
  if (verdict !== 'fails' && harsher)
    return {
      subject,
      verdict: 'undetermined',
      found: `open for ${formatQuantity(hoursOpen, 'h')}, but the floor reached ${hottestC} °C and ${dampestPct} %: no published life covers that.`,
      margin,
      remedy: bake,
    }
  return {
    subject,
    verdict,
    found: `open for ${formatQuantity(hoursOpen, 'h')} of ${formatQuantity(hours, 'h')} (level ${level}).`,
    margin,
    ...(verdict === 'fails' && { remedy: bake }),
  }
}
