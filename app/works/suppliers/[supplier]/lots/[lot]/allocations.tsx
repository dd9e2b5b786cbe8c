import { randomUUID } from 'node:crypto'
import { lotsAddress } from '@/app/addresses'
import { allocateLot, returnAllocation } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { AllocationInStore } from '@/lib/programme/works/store-of-lots'
import type { WorksLotRead } from '@/lib/queries/works/works-lot'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { isUsable } from '@/shared/records/lot-identity'
import { heldBy, leftInStore } from '@/shared/storage/order-of-use'

/** Which programmes hold pieces of the lot, and the forms to allocate more and to take some back. */
export function Allocations({ read, actor }: { read: WorksLotRead; actor: Actor }) {
  const { lot, store, supplier } = read
  const left = leftInStore(store)
  const mayReturn = !refusal('return-allocation', actor)
  const mayAllocate = !refusal('allocate-lot', actor) && left > 0 && isUsable(lot)
  if (store.allocations.length === 0 && !mayAllocate) return null
  return (
    <Section id="allocations" heading="Allocated" lead={`${left} of ${lot.quantity} pieces are left`}>
      {store.allocations.length > 0 && (
        <RuledTable
          caption="Allocations"
          captionHidden
          rows={store.allocations}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'Programme',
              set: 'shrink',
              names: true,
              cell: ({ programme }) => <a href={lotsAddress(programme)}>{programme}</a>,
            },
            { label: 'On', set: 'shrink', cell: ({ at }) => <Day at={at} /> },
            { label: 'Allocated', set: 'number', cell: ({ quantity }) => quantity },
            { label: 'Came back', set: 'number', cell: ({ returned }) => returned },
            { label: 'Out of order because', cell: ({ outOfOrder }) => outOfOrder ?? '–' },
            ...(mayReturn
              ? [
                  {
                    label: 'Take back',
                    cell: (allocation: AllocationInStore) => (
                      <TakeBack supplier={supplier.code} allocation={allocation} />
                    ),
                  },
                ]
              : []),
          ]}
        />
      )}
      {mayAllocate && (
        <CommandForm
          action={allocateLot}
          formKey={randomUUID()}
          hidden={{ supplier: supplier.code, lot: lot.code }}
          label="Allocate pieces of the lot"
          className="form-narrow"
        >
          <TextBox name="to" label="To programme" hint="Its code, such as LX-41." required />
          <NumberBox name="quantity" label="Quantity" unit="pieces" required />
          <LinesBox
            name="outOfOrder"
            label="Why out of order"
            hint="Only where another lot of the part should be used first, or the last day is past."
            rows={2}
            optional
          />
          <SubmitButton kind="quiet">Allocate</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}

function TakeBack({ supplier, allocation }: { supplier: string; allocation: AllocationInStore }) {
  const held = heldBy([allocation])
  if (held === 0) return <>–</>
  return (
    <Disclosure summary="Take back" printed={false}>
      <CommandForm
        action={returnAllocation}
        formKey={randomUUID()}
        hidden={{ supplier, allocation: allocation.id }}
        label={`Take back from ${allocation.programme}`}
        className="form-narrow"
      >
        <NumberBox name="quantity" label="Quantity" unit="pieces" defaultValue={held} required />
        <TextBox name="reason" label="Why" required />
        <SubmitButton kind="quiet">Take back into the store</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
