import { itemAddress, limitAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { formatQuantity } from '@/shared/quantity/format'
import { lessonName } from '@/shared/lessons/lesson'

/** What earlier programmes taught this one: the items and limits it was opened with. */
export function BroughtBy({ view: { code, state } }: { view: ProgrammeView }) {
  const rows = [
    ...state.items.flatMap(({ definition, lesson }) =>
      lesson ? [{ lesson, what: `Item: ${definition.title}`, href: itemAddress(code, definition.key) }] : [],
    ),
    ...state.facts.requirements.flatMap(({ lesson, limit: key, value }) => {
      if (!lesson) return []
      const limit = findLimit(key)
      const what = limit
        ? `${limit.label}: ${limit.direction} ${formatQuantity(value, limit.unit)}`
        : `Limit ${key}`
      return [{ lesson, what, href: limitAddress(code, key) }]
    }),
  ]
  if (rows.length === 0) return null
  return (
    <Section
      heading="What earlier programmes taught this one"
      lead="It was opened with these; an item can be found not applicable and a limit withdrawn, with a reason, like any other."
    >
      <RuledTable
        caption="Brought by lessons"
        captionHidden
        rows={rows}
        rowKey={({ what }) => what}
        columns={[
          { label: 'What', names: true, cell: ({ what, href }) => <a href={href}>{what}</a> },
          { label: 'From', cell: ({ lesson }) => lessonName(lesson) },
        ]}
      />
    </Section>
  )
}
