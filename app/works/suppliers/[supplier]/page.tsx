import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { storeAddress, supplierAddress, suppliersAddress, worksTrailAddress } from '@/app/addresses'
import { closeSupplier } from '@/app/forms/command-actions'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { readSupplier } from '@/lib/queries/works/suppliers'
import { dateAtWorks } from '@/lib/settings/works'
import { refusal } from '@/shared/policy'
import { StoreTable } from '../../store-table'
import { visitWorks } from '../../visit-works'
import { WorksSheet } from '../../works-sheet'
import { CloseForm } from '../../close-form'
import { rejectedInWords } from '../rejected-in-words'
import { ReceiveForm } from './receive-form'
import { RecordedBefore } from './recorded-before'
import { SupplierActions } from './supplier-actions'
import { SupplierSeries } from './supplier-series'

interface SupplierPageProps {
  readonly params: Promise<{ supplier: string }>
}

export const generateMetadata = async ({ params }: SupplierPageProps) => ({
  title: `${addressPart((await params).supplier)} – Liquidus`,
})

/** A supplier: its lots, how the next of each part is inspected, and what it did about those that were rejected. */
export default async function SupplierPage({ params }: SupplierPageProps) {
  const code = addressPart((await params).supplier)
  const { person, actor } = await visitWorks(supplierAddress(code))
  const supplier = await readSupplier(code)
  if (!supplier) notFound()
  const { lots, series, closed } = supplier
  const today = dateAtWorks(new Date())
  const mayReceive = !closed && !refusal('receive-lot', actor)
  return (
    <WorksSheet
      person={person}
      at={suppliersAddress()}
      title={supplier.code}
      place={[{ text: 'Suppliers', href: suppliersAddress() }, { text: supplier.code }]}
      cells={[
        { label: 'Lots', value: lots.length },
        { label: 'Awaiting disposition', value: lots.filter(({ disposition }) => !disposition).length },
        { label: 'Rejected', value: rejectedInWords(lots), wide: true },
      ]}
    >
      {closed && (
        <Notice kind="info" title="Closed">
          Since <Day at={closed.at} />: {closed.why} Nothing more is received from it.
        </Notice>
      )}
      <p className="form-actions">
        {mayReceive && <ButtonLink href="#receive">Receive a lot</ButtonLink>}
        <ButtonLink href={storeAddress()}>Store</ButtonLink>
        <ButtonLink href={worksTrailAddress({ kind: 'supplier', code: supplier.code })}>Trail</ButtonLink>
      </p>
      <Section heading="Lots">
        {lots.length > 0 ? (
          <StoreTable caption={`Lots of ${supplier.code}`} lots={lots} today={today} />
        ) : (
          <Empty title="No lot yet">
            {closed ? (
              'Nothing more is received from it.'
            ) : (
              <FirstStep
                first="First receive what it delivered: part, quantity, and what came with it."
                refused={refusal('receive-lot', actor)}
                href="#receive"
                does="Receive a lot"
              />
            )}
          </Empty>
        )}
      </Section>
      <RecordedBefore lots={supplier.recordedBefore} />
      <SupplierSeries series={series} />
      <SupplierActions supplier={supplier} actor={actor} />
      {mayReceive && (
        <ReceiveForm
          supplier={supplier.code}
          parts={[...new Set(lots.map(({ part }) => part))]}
          today={today}
        />
      )}
      {!closed && !refusal('close-supplier', actor) && (
        <CloseForm
          what="supplier"
          code={supplier.code}
          action={closeSupplier}
          hint="Its lots in the store stay to be used; nothing more is received."
        />
      )}
    </WorksSheet>
  )
}
