import { concessionsAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { GateState } from '@/shared/gate/gate'
import type { ItemState } from '@/shared/gate/item-status'
import { blockersInWords } from './blockers-in-words'
import { WaysOut } from './ways-out'

interface BlockersProps {
  code: string
  gate: GateState
  items: readonly ItemState[]
}

/** Everything outstanding before the gate, each with a link to where it is mended. */
export function Blockers({ code, gate, items }: BlockersProps) {
  if (gate.blockers.length === 0) {
    return (
      <Notice kind="success" title="Nothing outstanding">
        Every item of the stage is approved or not applicable.
      </Notice>
    )
  }
  return (
    <Section
      heading="Outstanding before this gate"
      lead="The gate opens only when this list is empty and the three departments have signed."
    >
      <div className="gate-blockers">
        <RuledTable
          caption="Outstanding before this gate"
          captionHidden
          groups={blockersInWords(code, gate, items)}
          rowKey={({ message }, position) => `${message} ${position}`}
          columns={[
            { label: 'Kind', set: 'shrink', cell: ({ kind }) => <span className="faint">{kind}</span> },
            { label: 'What', names: true, cell: ({ message, href }) => <a href={href}>{message}</a> },
          ]}
        />
      </div>
      <WaysOut gate={gate} />
      <p>
        <a href={concessionsAddress(code)}>Concessions and deviation permits</a> of the programme.
      </p>
    </Section>
  )
}
