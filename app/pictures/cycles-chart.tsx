import { SharesAddedUp } from '@/app/drawing/shares-added-up'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import { cycleTest, useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { formatQuantity } from '@/shared/quantity/format'
import { modelLabel } from '@/shared/reliability/models/model'
import { fatigueModelsFor, testCyclesFor } from '@/shared/reliability/thermal-test-cycles'
import { valueOf } from './value-of'

/** How much of the cycling test each swing of the service takes, by every set of constants that applies. */
export function CyclesChart({ view }: { view: ProgrammeView }) {
  const cycles = valueOf(view, useCycles)
  const test = valueOf(view, cycleTest)?.[0]
  const years = valueOf(view, serviceYears)
  const family = valueOf(view, alloyFamily)
  if (!cycles || !test || years === undefined || !family) return null
  const asked = formatQuantity(test.cycles, 'cycles', 6)
  return (
    <Section
      heading="Temperature cycles against their test"
      lead={`Swings of ${formatQuantity(years, 'years')} of service, converted to cycles of the test “${test.test}” and added up.`}
    >
      <div className="picture-row">
        {fatigueModelsFor(family).map((model) => (
          <SharesAddedUp
            key={model.edition}
            title={`Share of ${asked} by ${modelLabel(model)}`}
            maxPct={100}
            axis="Cycles of the test, %"
            messageLabel="Of the test"
            shares={cycles.map((cycle) => {
              const needed = testCyclesFor(model, test, cycle, years)
              return {
                name: `${cycle.cycle}: ${formatQuantity(cycle.swingK, 'K')}, ${formatQuantity(cycle.perYear, '1')} a year`,
                pct: (needed / test.cycles) * 100,
                message: formatQuantity(needed, 'cycles', 3),
              }
            })}
            note={model.caution}
          />
        ))}
      </div>
    </Section>
  )
}
