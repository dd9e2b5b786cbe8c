import { SharesAddedUp } from '@/app/drawing/shares-added-up'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { floatShareUsed } from '@/shared/physics/solder-exposure'
import { floatUsedMax } from '@/shared/plan/limits/laminate'
import { boardFinish } from '@/shared/plan/parameters/finishes'
import { laminate, solderExposures } from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import { exposuresCounted } from '@/shared/rules/specification/solder-exposures'
import { orNothing, governingFor, valueOf } from './value-of'

/** Each soldering's share of the time that the laminate floats on solder, one after the other. */
export function ExposureChart({ view }: { view: ProgrammeView }) {
  const key = valueOf(view, laminate)
  const listed = valueOf(view, solderExposures)
  const finish = valueOf(view, boardFinish)
  if (!key || !listed || !finish) return null
  const grade: Laminate = LAMINATES[key]
  const rows = exposuresCounted(listed, BOARD_FINISHES[finish]).map((row) => ({
    row,
    share: orNothing(() => floatShareUsed(grade.solderFloat, [row])),
  }))
  const max = governingFor(view, floatUsedMax)
  if (rows.some(({ share }) => share === undefined)) return null
  return (
    <Section
      heading="Soldering heat added up"
      lead={`What ${grade.label} bears: ${grade.solderFloat.map(({ temperatureC, seconds }) => `${seconds} s at ${temperatureC} °C`).join(', ')}. That shares add up in proportion is an assumption.`}
    >
      <SharesAddedUp
        title="Share of the solder-float capability used"
        maxPct={max.value}
        axis="Capability used, %"
        messageLabel="Exposure"
        shares={rows.map(({ row, share = 0 }) => ({
          name: row.step,
          pct: share * 100,
          message: `${row.times} × ${formatQuantity(row.seconds, 's')} at ${formatQuantity(row.temperatureC, '°C')}`,
        }))}
      />
    </Section>
  )
}
