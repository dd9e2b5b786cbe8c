import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatQuantity } from '@/shared/quantity/format'
import { CoatingLeftAtStore } from './coating-left-chart'
import { storeOf } from './coats-in-store'
import { CoatingLeftByTemperature } from './store-temperature-charts'

/** How the solderable coating of boards and leads wastes in store. */
export function StorageCharts({ view }: { view: ProgrammeView }) {
  const store = storeOf(view)
  if (!store || store.coats.length === 0) return null
  const { temperatureC, minUm, coats } = store
  return (
    <Section
      heading="Coating left in store"
      lead="Tin goes into compound with the copper beneath it: by the published laws of growth, whose energies differ more than two to one."
    >
      {coats.map((alike, position) => (
        <Disclosure
          key={alike.subjects.join()}
          summary={`${alike.subjects.join(', ')}: ${formatQuantity(alike.coat.coatingUm, 'µm')} for ${formatQuantity(alike.months, 'months')}`}
          open={position === 0}
        >
          <div className="picture-row">
            <CoatingLeftAtStore {...alike} temperatureC={temperatureC} minUm={minUm} />
            <CoatingLeftByTemperature {...alike} temperatureC={temperatureC} minUm={minUm} />
          </div>
        </Disclosure>
      ))}
    </Section>
  )
}
