import { randomUUID } from 'node:crypto'
import { supplierAddress, suppliersAddress } from '@/app/addresses'
import { addSupplier } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { readSuppliers } from '@/lib/queries/works/suppliers'
import { refusal } from '@/shared/policy'
import { visitWorks } from '../visit-works'
import { WorksSheet } from '../works-sheet'
import { rejectedInWords } from './rejected-in-words'

export const metadata = { title: 'Suppliers – Liquidus' }

/** Who delivers to the works, and how their lots fared. */
export default async function SuppliersPage() {
  const { person, actor } = await visitWorks(suppliersAddress())
  const suppliers = await readSuppliers()
  const open = suppliers.filter(({ closedAt }) => closedAt === null)
  return (
    <WorksSheet
      person={person}
      at={suppliersAddress()}
      place={[{ text: 'Suppliers' }]}
      title="Suppliers"
      supplement="Whose lots are tested once and counted in every programme that holds some"
      cells={[
        { label: 'Suppliers', value: open.length },
        { label: 'Lots', value: suppliers.reduce((sum, { lots }) => sum + lots.length, 0) },
      ]}
    >
      {suppliers.length > 0 ? (
        <RuledTable
          caption="Suppliers"
          captionHidden
          rows={suppliers}
          rowKey={({ code }) => code}
          columns={[
            {
              label: 'Supplier',
              names: true,
              cell: ({ code, closedAt }) => (
                <>
                  <a href={supplierAddress(code)}>{code}</a>
                  {closedAt && ', closed'}
                </>
              ),
            },
            { label: 'Lots', set: 'number', cell: ({ lots }) => lots.length },
            {
              label: 'Awaiting disposition',
              set: 'number',
              cell: ({ lots }) => lots.filter(({ disposition }) => !disposition).length,
            },
            { label: 'Rejected', cell: ({ lots }) => rejectedInWords(lots) },
          ]}
        />
      ) : (
        <Empty title="No supplier yet">
          Quality of the works adds one; its lots are received on its page.
        </Empty>
      )}
      {!refusal('add-supplier', actor) && (
        <Section id="add" heading="Add a supplier">
          <CommandForm
            action={addSupplier}
            formKey={randomUUID()}
            label="Add a supplier"
            className="form-narrow"
          >
            <TextBox
              name="supplier"
              label="Name"
              hint="Lots and what programmes recorded before are found by it; capitals and spaces make no difference."
              required
            />
            <SubmitButton>Add the supplier</SubmitButton>
          </CommandForm>
        </Section>
      )}
    </WorksSheet>
  )
}
