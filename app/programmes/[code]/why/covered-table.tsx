import { whyAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import type { CoveredThing } from '@/shared/why/then-and-now'

/** What a signature covered, thing by thing: as it was then, as it is today, and whether that is the same. */
export function CoveredTable({ code, covered }: { code: string; covered: readonly CoveredThing[] }) {
  return (
    <RuledTable
      caption="What the signature covered, then and today"
      captionHidden
      narrow="cards-early"
      rows={covered}
      rowKey={({ what }, position) => `${position} ${what}`}
      columns={[
        {
          label: 'What',
          names: true,
          cell: ({ what, why }) => (why ? <a href={whyAddress(code, why)}>{what}</a> : what),
        },
        { label: 'When it was signed', cell: ({ then }) => then },
        { label: 'Today', cell: ({ now }) => now },
        {
          label: 'Same',
          set: 'shrink',
          cell: ({ same, how }) =>
            same ? (
              'the same'
            ) : (
              <>
                <strong className="ink-carmine">changed</strong>
                {how.map((line) => (
                  <span key={line} className="block">
                    {line}
                  </span>
                ))}
              </>
            ),
        },
      ]}
    />
  )
}
