import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import type { DisputedJoint } from '@/shared/inspection/agreement-study'

interface DisputedProps {
  disputed: readonly DisputedJoint[]
  inspectors: readonly string[]
}

/** The joints not called alike: those to look at together. */
export function Disputed({ disputed, inspectors }: DisputedProps) {
  if (disputed.length === 0) return <Notice kind="success" title="Every joint was called alike" />
  return (
    <RuledTable
      caption="Joints to look at together"
      narrow="scroll"
      rows={disputed}
      rowKey={({ joint }) => joint}
      columns={[
        { label: 'Joint', names: true, cell: ({ joint }) => joint },
        ...inspectors.map((name) => ({
          label: name,
          cell: ({ calls, known }: DisputedJoint) => {
            const call = calls.find(({ inspector }) => inspector === name)?.call
            return call !== undefined && known !== undefined && call !== known ? (
              <strong>{call}</strong>
            ) : (
              (call ?? '–')
            )
          },
        })),
        { label: 'Reference', cell: ({ known }) => known ?? 'not said' },
      ]}
    />
  )
}
