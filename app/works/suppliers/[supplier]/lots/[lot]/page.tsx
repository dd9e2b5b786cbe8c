import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { suppliersAddress, supplierAddress, worksLotAddress, worksTrailAddress } from '@/app/addresses'
import { CorrectLot } from '@/app/lots/correct-lot'
import { Disposition } from '@/app/lots/disposition'
import { NewTest } from '@/app/lots/new-test'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { readProgramme } from '@/lib/queries/programme-reader'
import { readWorksLot } from '@/lib/queries/works/works-lot'
import { dispositionInWords } from '@/shared/records/lot-identity'
import { leftInStore } from '@/shared/storage/order-of-use'
import { visitWorks } from '../../../../visit-works'
import { WorksSheet } from '../../../../works-sheet'
import { Allocations } from './allocations'
import { LeadAtSupplier } from './lead-at-supplier'
import { lotAtSupplier } from './lot-at-supplier'
import { TestsAtWorks } from './tests-at-works'
import { WhereItIs } from './where-it-is'

interface LotPageProps {
  readonly params: Promise<{ supplier: string; lot: string }>
  readonly searchParams: Promise<Record<string, string | undefined>>
}

export const generateMetadata = async ({ params }: LotPageProps) => ({
  title: `Lot ${addressPart((await params).lot)} – Liquidus`,
})

/** One lot of the works: where it is, how it was tested, what was decided, and who holds it. */
export default async function WorksLotPage({ params, searchParams }: LotPageProps) {
  const named = await params
  const [supplier, code] = [addressPart(named.supplier), addressPart(named.lot)]
  const { person, actor } = await visitWorks(worksLotAddress(supplier, code))
  const [read, given] = [await readWorksLot(supplier, code), await searchParams]
  if (!read) notFound()
  const { lot, store } = read
  const at = lotAtSupplier(read, actor)
  const reads = await Promise.all(read.judged.map(({ state }) => readProgramme(state.programme.code, person)))
  const views = reads.flatMap((one) => (one.found && one.view ? [one.view] : []))
  return (
    <WorksSheet
      person={person}
      at={suppliersAddress()}
      title={`Lot ${lot.code}`}
      supplement={`${lot.part}, ${lot.kind}`}
      place={[
        { text: 'Suppliers', href: suppliersAddress() },
        { text: supplier, href: supplierAddress(supplier) },
        { text: lot.code },
      ]}
      cells={[
        { label: 'Supplier', value: supplier },
        { label: 'Date code', value: lot.dateCode || 'none' },
        { label: 'Quantity', value: lot.quantity },
        { label: 'Left in store', value: leftInStore(store) },
        { label: 'Received', value: <Day at={lot.receivedOn} /> },
        { label: 'To be used by', value: lot.expiresOn ? <Day at={lot.expiresOn} /> : 'not stated' },
        {
          label: 'Store',
          value: `${lot.storage.temperatureC} °C, ${lot.storage.relativeHumidityPct} % RH, ${lot.storage.packing}`,
        },
        { label: 'Disposition', value: dispositionInWords(lot) },
      ]}
    >
      <LeadAtSupplier read={read} actor={actor} views={views} />
      <p className="form-actions">
        <ButtonLink href="#where">Where is it?</ButtonLink>
        <ButtonLink href={worksTrailAddress({ kind: 'supplier', code: supplier })}>
          Trail of the supplier
        </ButtonLink>
      </p>
      <WhereItIs read={read} />
      <Allocations read={read} actor={actor} />
      <TestsAtWorks read={read} at={at} />
      <NewTest at={at} lot={lot} given={given} />
      <Disposition at={at} lot={lot} />
      <CorrectLot at={at} lot={lot} corrections={read.corrections.get(lot.id) ?? []} />
    </WorksSheet>
  )
}
