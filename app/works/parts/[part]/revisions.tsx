import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import type { PartRead } from '@/lib/queries/works/parts'
import { partDifference } from '@/shared/works/part-difference'
import { PartValuesShown } from './values-shown'

type Revision = PartRead['revisions'][number]

/** Every revision of a part, newest first, with what each changed and the whole of its values. */
export function PartRevisions({ revisions }: { revisions: readonly Revision[] }) {
  const rows = revisions.map((revision, position) => ({ ...revision, before: revisions[position + 1] }))
  return (
    <RuledTable
      caption="Revisions of this part"
      captionHidden
      rows={rows}
      rowKey={({ number }) => number}
      columns={[
        { label: 'No.', set: 'shrink', names: true, cell: ({ number }) => number },
        {
          label: 'What changed',
          cell: ({ before, values }) => (
            <>
              {before
                ? partDifference(before.values, values).map((line) => (
                    <span key={line} className="block">
                      {line}
                    </span>
                  ))
                : 'described for the first time'}
              <Disclosure summary="All its values">
                <PartValuesShown values={values} />
              </Disclosure>
            </>
          ),
        },
        {
          label: 'By',
          cell: ({ author, at }) => (
            <>
              {author}, <Day at={at} />
            </>
          ),
        },
        { label: 'Why', cell: ({ reason }) => reason },
      ]}
    />
  )
}
