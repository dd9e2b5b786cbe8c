import { forbidden, notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { supplierAddress, suppliersAddress, worksLotAddress } from '@/app/addresses'
import { PreviewButton, WhatItWouldTurn } from '@/app/forms/previewed-submit'
import { formFrom } from '@/app/imports/chosen-form'
import { mappingFrom } from '@/app/imports/chosen-mapping'
import { ImportSheet } from '@/app/imports/import-sheet'
import { importerFor } from '@/app/imports/importer'
import { TestFacts } from '@/app/lots/test-facts'
import { ButtonLink } from '@/app/ui/button'
import { Section } from '@/app/ui/section'
import { visitWorks } from '@/app/works/visit-works'
import { WorksSheet } from '@/app/works/works-sheet'
import { readImport } from '@/lib/queries/read-import'
import { readWorksLot } from '@/lib/queries/works/works-lot'
import { lotTarget, targetFields } from '@/lib/readings/import-target'
import { refusal } from '@/shared/policy'
import { testWorksLot } from '../actions'
import { lotAtSupplier } from '../lot-at-supplier'
import { WORKS_LOT_IMPORT } from '../lot-import'

interface ImportPageProps {
  readonly params: Promise<{ supplier: string; lot: string }>
  readonly searchParams: Promise<Record<string, string | undefined>>
}

export const generateMetadata = async ({ params }: ImportPageProps) => ({
  title: `Test of lot ${addressPart((await params).lot)} – Liquidus`,
})

/** A file of test readings: which column is which, and the facts of the test to confirm with. */
export default async function ImportPage({ params, searchParams }: ImportPageProps) {
  const named = await params
  const [supplier, code] = [addressPart(named.supplier), addressPart(named.lot)]
  const { person, actor } = await visitWorks(worksLotAddress(supplier, code))
  if (refusal('test-lot', actor)) forbidden()
  const [read, given] = [await readWorksLot(supplier, code), await searchParams]
  const [file, method] = [given['file'] ?? '', given['method'] ?? '']
  const target = read && lotTarget(read.lot.code, method)
  if (!read || target?.kind !== 'lot') notFound()
  const fields = targetFields(target)
  const at = lotAtSupplier(read, actor)
  const { reader } = importerFor(WORKS_LOT_IMPORT, person, {
    supplierId: read.supplier.id,
    supplier,
    lot: code,
  })
  const found = await readImport(file, reader, fields, {
    mapping: mappingFrom(given, fields),
    form: formFrom(given),
  })
  if (!found) notFound()
  return (
    <WorksSheet
      person={person}
      at={suppliersAddress()}
      place={[
        { text: 'Suppliers', href: suppliersAddress() },
        { text: supplier, href: supplierAddress(supplier) },
        { text: code, href: at.address },
        { text: 'Import' },
      ]}
      title={`Test of lot ${code}`}
      supplement="All readings of the file, or none"
    >
      <ImportSheet
        found={found}
        fields={fields}
        address={`${at.address}/import`}
        hidden={{ ...at.names, lot: code, method, file }}
        action={testWorksLot}
        label="Record the test"
      >
        <Section heading={`The test: ${target.method.label.toLowerCase()}`}>
          <TestFacts at={at} lot={read.lot} method={target.method} given={given} />
          <PreviewButton />
          <WhatItWouldTurn />
        </Section>
      </ImportSheet>
      <p>
        <ButtonLink href={at.address}>Back to the lot; nothing is stored</ButtonLink>
      </p>
    </WorksSheet>
  )
}
