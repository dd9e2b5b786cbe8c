import { BridgingGap } from '@/app/drawing/bridging-gap'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { bridgingGapMin, bridgingRunMax } from '@/shared/plan/limits/spacings'
import { spacings } from '@/shared/plan/parameters/spacings'
import { formatQuantity } from '@/shared/quantity/format'
import { acrossMm } from '@/shared/rules/specification/bridging-risk'
import { DrawnInPart, MAX_DRAWN } from './drawn-in-part'
import { governingFor, valueOf } from './value-of'

/** Every pair that meets the solder bare, as it lies to the travel of the board. */
export function BridgingGaps({ view }: { view: ProgrammeView }) {
  const bare = (valueOf(view, spacings) ?? []).filter(({ solderSide }) => solderSide === 'bare')
  if (bare.length === 0) return null
  const gap = governingFor(view, bridgingGapMin)
  const run = governingFor(view, bridgingRunMax)
  return (
    <Section
      heading="Bare copper on the wave"
      lead="Seen from the solder side. Solder drains along a run; what lies across the travel holds it."
    >
      <DrawnInPart all={bare.length} />
      <div className="picture-row">
        {bare.slice(0, MAX_DRAWN).map((row, at) => (
          <BridgingGap
            key={at}
            title={row.between}
            gapMm={row.gapMm}
            runMm={row.parallelMm ?? 0}
            angleDeg={row.travelAngleDeg ?? 90}
            acrossMm={Number(acrossMm(row).toFixed(6))}
            numbers={{
              columns: [{ label: 'Measure' }, { label: 'Found' }, { label: 'Asked' }],
              rows: [
                ['Gap', formatQuantity(row.gapMm, 'mm'), `at least ${formatQuantity(gap.value, 'mm')}`],
                ['Side by side', formatQuantity(row.parallelMm ?? 0, 'mm'), '–'],
                [
                  'Angle to travel',
                  row.travelAngleDeg === undefined
                    ? '90°, not given'
                    : formatQuantity(row.travelAngleDeg, '°'),
                  '–',
                ],
                [
                  'Across the travel',
                  formatQuantity(Number(acrossMm(row).toFixed(6)), 'mm', 3),
                  `at most ${formatQuantity(run.value, 'mm')}`,
                ],
              ],
            }}
          />
        ))}
      </div>
    </Section>
  )
}
