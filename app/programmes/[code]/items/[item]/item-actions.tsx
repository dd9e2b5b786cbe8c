import { AskForm } from '@/app/programmes/[code]/actions/ask-form'
import { Day } from '@/app/ui/date'
import { actionColumns } from '@/app/programmes/[code]/actions/action-columns'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actionStatus } from '@/shared/gate/action-status'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { partRefusal } from '@/shared/policy'

/** Questions about the item to other departments, and the form to ask one. */
export function ItemActions({
  view,
  state,
  comment,
}: {
  view: ProgrammeView
  state: ItemState
  /** The number of a comment that is to become an action. */
  comment?: string | undefined
}) {
  const becoming = /^\d{1,6}$/.test(comment ?? '') ? Number(comment) : undefined
  const { key } = state.item.definition
  const actions = view.state.actions.filter((action) => action.itemKey === key)
  const refused = partRefusal('ask-action', view.actor)
  if (actions.length === 0 && refused) return null
  return (
    <Section id="actions" heading="Actions for other departments">
      {actions.length > 0 && (
        <RuledTable
          caption="Actions about this item"
          captionHidden
          rows={actions}
          rowKey={({ number }) => number}
          columns={[
            ...actionColumns(view.code),
            { label: 'To', set: 'shrink', cell: ({ to }) => DEPARTMENT_NAMES[to] },
            { label: 'Due', set: 'shrink', cell: ({ dueOn }) => <Day at={dueOn} /> },
            { label: 'Status', set: 'shrink', cell: actionStatus },
          ]}
        />
      )}
      <AskForm view={view} items={[key]} comment={becoming} />
    </Section>
  )
}
