import { randomUUID } from 'node:crypto'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { addRecord } from '@/app/records/actions'
import { Day } from '@/app/ui/date'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { SupplierRead } from '@/lib/queries/works/suppliers'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { supplierAction } from '@/shared/records/kinds/supplier-action'

const { supplier: _, ...ASKED } = supplierAction.columns

/** What the supplier did about rejected lots, what is still to come from it, and the form to record it. */
export function SupplierActions({ supplier, actor }: { supplier: SupplierRead; actor: Actor }) {
  const waiting = [
    ...new Set(
      supplier.series.filter(({ next }) => next.severity === 'discontinued').map(({ part }) => part),
    ),
  ]
  const may = !refusal('add-record', actor, supplierAction)
  if (!may && supplier.actions.length === 0 && waiting.length === 0) return null
  return (
    <Section id="actions" heading="Supplier actions" lead={supplierAction.help}>
      {waiting.map((part) => (
        <Notice key={part} kind="warning" title={`Open: ${part}`}>
          Inspection is discontinued; no lot is taken until the supplier has acted and quality has accepted
          it.
        </Notice>
      ))}
      {supplier.actions.length > 0 && (
        <RuledTable
          caption="Supplier actions"
          captionHidden
          rows={supplier.actions}
          rowKey={({ id }) => id}
          columns={[
            { label: 'Part', names: true, cell: ({ part }) => part },
            { label: 'Accepted on', set: 'shrink', cell: ({ acceptedOn }) => <Day at={acceptedOn} /> },
            { label: 'What was changed', cell: ({ action }) => action },
          ]}
        />
      )}
      {may && (
        <CommandForm
          action={addRecord}
          formKey={randomUUID()}
          hidden={{
            'works.kind': 'supplier',
            'works.code': supplier.code,
            kind: supplierAction.key,
            'rows.0.supplier': supplier.code,
          }}
          label="Add a supplier action"
        >
          <div className="form-row">
            {Object.entries(ASKED).map(([name, column]) => (
              <ColumnField key={name} name={`rows.0.${name}`} column={column} />
            ))}
          </div>
          <PreviewedSubmit kind="quiet">Record the action</PreviewedSubmit>
        </CommandForm>
      )}
    </Section>
  )
}
