import { notFound } from 'next/navigation'
import { lineAddress, machineAddress, worksAddress, worksTrailAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { closeMachine } from '@/app/forms/command-actions'
import { Empty } from '@/app/ui/empty'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { readInstruments } from '@/lib/queries/instruments'
import { readMachine, readTokens } from '@/lib/queries/works/machine'
import { refusal } from '@/shared/policy'
import { machineKindName } from '@/shared/works/machine-kind'
import { CloseForm } from '../../close-form'
import { WorksLogTable } from '../../log-table'
import { visitWorks } from '../../visit-works'
import { WorksSheet } from '../../works-sheet'
import { OpenLogForm } from './open-log'
import { Tokens } from './tokens'

interface MachinePageProps {
  readonly params: Promise<{ machine: string }>
}

export const generateMetadata = async ({ params }: MachinePageProps) => ({
  title: `${addressPart((await params).machine)} – Liquidus`,
})

/** A machine: what is logged on it, who or what logs it, and its trail. */
export default async function MachinePage({ params }: MachinePageProps) {
  const code = addressPart((await params).machine)
  const { person, actor } = await visitWorks(machineAddress(code))
  const [view, instruments] = await Promise.all([readMachine(code), readInstruments()])
  if (!view) notFound()
  const { line, machine } = view
  const tokens = await readTokens(machine.id)
  const isOpen = machine.closedAt === null
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title={machine.code}
      place={[{ text: line.code, href: lineAddress(line.code) }, { text: machine.code }]}
      cells={[
        { label: 'What it is', value: machineKindName(machine.kind) },
        { label: 'Line', value: line.code },
        { label: 'Logs', value: machine.states.length },
      ]}
    >
      {!isOpen && (
        <Notice kind="info">This machine is closed. What was recorded of it stays to be read.</Notice>
      )}
      <Section heading="Logs">
        {machine.states.length > 0 ? (
          <WorksLogTable logs={machine.states} caption={`Logs of ${machine.code}`} />
        ) : (
          <Empty title="Nothing is logged here yet">
            Open a log of each characteristic; its readings are typed in, come from a file, or are pushed by
            the machine.
          </Empty>
        )}
      </Section>
      {isOpen && !refusal('open-log', actor) && <OpenLogForm view={view} instruments={instruments} />}
      <Tokens machine={machine.code} tokens={tokens} actor={actor} />
      <p>
        <a href={worksTrailAddress({ kind: 'machine', code: machine.code })}>Trail of this machine</a>
      </p>
      {isOpen && !refusal('close-machine', actor) && (
        <CloseForm what="machine" code={machine.code} action={closeMachine} />
      )}
    </WorksSheet>
  )
}
