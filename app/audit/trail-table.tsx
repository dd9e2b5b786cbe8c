import { trailAddress } from '@/app/addresses'
import { Moment } from '@/app/ui/date'
import { Digest } from '@/app/ui/digest'
import { RuledTable } from '@/app/ui/ruled-table'
import type { TrailRow } from '@/lib/queries/audit'

/** Trails with their heads, and the ways to verify and export each. */
export function TrailTable({ trails }: { trails: readonly TrailRow[] }) {
  return (
    <RuledTable
      caption="Trails"
      captionHidden
      rows={trails}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Programme',
          names: true,
          cell: ({ code, title }) => (
            <>
              <a href={trailAddress(code)}>{code}</a> {title}
            </>
          ),
        },
        { label: 'Entries', set: 'number', cell: ({ seq }) => seq },
        { label: 'Last verified', cell: ({ verified }) => <LastVerified verified={verified} /> },
        { label: 'Newest hash', cell: ({ hash }) => <Digest value={hash} length={24} /> },
        {
          label: 'Proof',
          cell: ({ code }) => (
            <span className="mark-row">
              <a href={`${trailAddress(code)}?verify=now`}>
                Verify<span className="sr-only"> {code}</span>
              </a>
              <a href={`${trailAddress(code)}/bundle`}>
                Export<span className="sr-only"> {code}</span> for the verifier
              </a>
            </span>
          ),
        },
      ]}
    />
  )
}

/** What the night found; only a verification of today says what stands today. */
function LastVerified({ verified }: Pick<TrailRow, 'verified'>) {
  if (!verified) return 'not yet'
  return (
    <>
      <Moment at={verified.at} />: {verified.intact ? 'whole' : <strong>broken</strong>}
      {verified.clockSteps > 0 && ', time runs backwards'}
    </>
  )
}
