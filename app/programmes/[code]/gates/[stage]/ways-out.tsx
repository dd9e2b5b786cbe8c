import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { faceOf } from '@/shared/commands/all-faces'
import { WAYS_OUT, type BlockerKind, type WayOut } from '@/shared/commands/ways-out'
import type { GateState } from '@/shared/gate/gate'
import type { OpenPoint } from '@/shared/gate/item-status'
import { whoMay } from '@/shared/policy'

/** For every kind of thing that is in the gate's way: what can be done about it, and who may. */
export function WaysOut({ gate }: { gate: GateState }) {
  const kinds = [
    ...new Set(
      gate.blockers.map(({ openPoint }) => (openPoint?.kind ?? 'gate') as OpenPoint['kind'] | 'gate'),
    ),
  ]
  return (
    <Disclosure summary="Ways out, for each kind" printed={false}>
      <RuledTable
        caption="Ways out of what is outstanding"
        captionHidden
        rows={kinds}
        rowKey={(kind) => kind}
        columns={[
          { label: 'Kind', names: true, set: 'shrink', cell: (kind) => kind },
          { label: 'One of these', cell: (kind) => <Ways kind={kind} /> },
        ]}
      />
    </Disclosure>
  )
}

const Ways = ({ kind }: { kind: BlockerKind }) => (
  <ul>
    {WAYS_OUT[kind].map((way) => (
      <li key={way.join(' ')}>{wayInWords(way)}</li>
    ))}
  </ul>
)

/** "Ask for a concession (…), then grant …": a step that several give is said once. */
const wayInWords = (way: WayOut): string =>
  [...new Set(way)]
    .map((command) => {
      const { label, may } = faceOf(command)
      return `${label} (${whoMay(may)})`
    })
    .join(', then ')
