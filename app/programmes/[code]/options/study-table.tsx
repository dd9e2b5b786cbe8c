import { itemAddress, optionAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { itemsOf, movedSince, type OptionStudy } from '@/shared/gate/option-study'
import { standing } from '@/shared/gate/study-revision'
import { findItem } from '@/shared/catalogue/standard-plan'

interface StudyTableProps {
  view: ProgrammeView
  caption: string
  studies: readonly OptionStudy[]
}

/** Studies, each with its question, its alternatives and what became of them. */
export function StudyTable({ view, caption, studies }: StudyTableProps) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={studies}
      rowKey={({ number }) => number}
      columns={[
        { label: 'No.', set: 'shrink', cell: ({ number }) => number },
        {
          label: 'Question',
          names: true,
          cell: ({ number, title }) => <a href={optionAddress(view.code, number)}>{title}</a>,
        },
        {
          label: 'Items',
          cell: (study) =>
            itemsOf(study).map((key, position) => (
              <span key={key}>
                {position > 0 && ', '}
                <a href={itemAddress(view.code, key)}>{itemTitle(view, key)}</a>
              </span>
            )),
        },
        {
          label: 'Alternatives',
          cell: ({ alternatives }) =>
            standing(alternatives)
              .map(({ name }) => name)
              .join('; '),
        },
        {
          label: 'Opened',
          cell: ({ openedBy, openedAt }) => (
            <>
              {openedBy}, <Day at={openedAt} />
            </>
          ),
        },
        { label: 'Decision', cell: (study) => <Decision view={view} study={study} /> },
      ]}
    />
  )
}

function Decision({ view, study: { adoption, alternatives } }: { view: ProgrammeView; study: OptionStudy }) {
  if (!adoption) return <>none yet</>
  const adopted = alternatives.find(({ name }) => name === adoption.name)
  const moved = adopted ? movedSince(adopted, view.state.facts.values) : []
  return (
    <>
      <strong>{adoption.name}</strong>, {adoption.by}, <Day at={adoption.at} />
      {moved.length > 0 && '; its values have moved on since'}
    </>
  )
}

/** An item by its title, also when the plan no longer has it. */
export const itemTitle = (view: ProgrammeView, key: string): string =>
  view.state.items.find(({ definition }) => definition.key === key)?.definition.title ??
  findItem(key)?.title ??
  key
