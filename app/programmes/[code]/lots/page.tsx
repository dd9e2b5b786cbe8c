import {
  ageingAddress,
  assembliesAddress,
  gaugesAddress,
  lotsAddress,
  samplingAddress,
  storageAddress,
  storeAddress,
  suppliersAddress,
  tableAddress,
} from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { TakeTable } from '@/app/ui/take-table'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { LotTable } from './lot-table'
import { SeriesOfLots } from './series-of-lots'

export const generateMetadata = programmeTitle(({ code }) => `Lots, ${code}`)

/** Delivered batches: how they were tested, what was decided, and where they went. */
export default programmePage(async ({ visit, code }) => {
  const lots = visit.view.state.facts.records.lots
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={lotsAddress(code)}
      place={[{ text: 'Lots' }]}
      title="Lots"
      supplement="What is bought in, shown to meet the specification before it is soldered"
      cells={[
        { label: 'Lots', value: lots.length },
        { label: 'Awaiting disposition', value: lots.filter(({ disposition }) => !disposition).length },
      ]}
    >
      {(view) => {
        return (
          <>
            <p className="form-actions">
              <ButtonLink href={storeAddress()}>Allocate a lot from the store</ButtonLink>
              <ButtonLink href={suppliersAddress()}>Receive a lot at its supplier</ButtonLink>
              <ButtonLink href={samplingAddress(code)}>Plan a sample</ButtonLink>
              <ButtonLink href={storageAddress(code)}>Storage clock</ButtonLink>
              <ButtonLink href={ageingAddress(code)}>Ageing equivalence</ButtonLink>
              <ButtonLink href={gaugesAddress(code)}>Instruments in use</ButtonLink>
              <ButtonLink href={assembliesAddress(code)}>Find an assembly</ButtonLink>
            </p>
            {lots.length > 0 ? (
              <>
                <LotTable view={view} lots={lots} />
                <TakeTable address={tableAddress(code, 'lot-tests')} what="Tests of all lots" />
              </>
            ) : (
              <Empty title="No lots yet">
                Every delivery of laminate, boards, coupons, components and consumables is a lot:{' '}
                <a href={suppliersAddress()}>receive it at its supplier</a>, then allocate it to this
                programme from <a href={storeAddress()}>the store of the works</a>.
              </Empty>
            )}
            <SeriesOfLots view={view} />
          </>
        )
      }}
    </ProgrammeSheet>
  )
})
