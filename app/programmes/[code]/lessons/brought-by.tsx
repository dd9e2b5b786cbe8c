import { itemAddress, limitAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { LESSONS_DOCUMENT } from '@/shared/plan/lessons-document'
import { lessonBehindItem } from '@/shared/lessons/opening-changes'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { formatQuantity } from '@/shared/quantity/format'

/** What earlier programmes taught this one: the items and limits it was opened with. */
export function BroughtBy({ view: { code, state } }: { view: ProgrammeView }) {
  const rows = [
    ...state.items.flatMap(({ definition, added }) => {
      const lesson = added ? lessonBehindItem(definition.asks) : undefined
      return lesson
        ? [{ lesson, what: `Item: ${definition.title}`, href: itemAddress(code, definition.key) }]
        : []
    }),
    ...state.facts.requirements
      .filter(({ document }) => document === LESSONS_DOCUMENT)
      .map(({ clause, limit: key, value }) => {
        const limit = findLimit(key)
        return {
          lesson: clause,
          what: limit
            ? `${limit.label}: ${limit.direction} ${formatQuantity(value, limit.unit)}`
            : `Limit ${key}`,
          href: limitAddress(code, key),
        }
      }),
  ]
  if (rows.length === 0) return null
  return (
    <Section
      heading="What earlier programmes taught this one"
      lead="It was opened with these; an item can be set aside and a limit withdrawn, with a reason, like any other."
    >
      <RuledTable
        caption="Brought by lessons"
        captionHidden
        rows={rows}
        rowKey={({ what }) => what}
        columns={[
          { label: 'What', names: true, cell: ({ what, href }) => <a href={href}>{what}</a> },
          { label: 'From', cell: ({ lesson }) => lesson },
        ]}
      />
    </Section>
  )
}
