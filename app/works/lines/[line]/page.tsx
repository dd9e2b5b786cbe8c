import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import {
  lineAddress,
  lineDayAddress,
  lineWallAddress,
  machineAddress,
  routeCardAddress,
  worksAddress,
  worksTrailAddress,
} from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { closeLine, openMachine } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { trailsOfTheWorks } from '@/lib/live/watched-trails'
import { readLineStates, type LineState } from '@/lib/queries/works/line-states'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { MACHINE_KINDS, machineKindName } from '@/shared/works/machine-kind'
import { CloseForm } from '../../close-form'
import { WorksLogTable } from '../../log-table'
import { visitWorks } from '../../visit-works'
import { WorksSheet } from '../../works-sheet'

interface LinePageProps {
  readonly params: Promise<{ line: string }>
}

export const generateMetadata = async ({ params }: LinePageProps) => ({
  title: `Line ${addressPart((await params).line)} – Liquidus`,
})

/** A line: its logs as they stand, its machines, the programmes made on it. */
export default async function LinePage({ params }: LinePageProps) {
  const code = addressPart((await params).line)
  const { person, actor } = await visitWorks(lineAddress(code))
  const { mark } = await trailsOfTheWorks()
  const [line] = await readLineStates(code)
  if (!line) notFound()
  const open = line.machineStates.filter(({ closedAt }) => closedAt === null)
  const isOpen = line.closedAt === null
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title={`${line.code}: ${line.name}`}
      newsSince={mark}
      place={[{ text: line.code }]}
      cells={[
        { label: 'Machines', value: open.length },
        { label: 'Programmes', value: line.stated.length },
      ]}
    >
      {!isOpen && <Notice kind="info">This line is closed. What was recorded of it stays to be read.</Notice>}
      {isOpen && (
        <p className="form-actions">
          <ButtonLink href={lineDayAddress(line.code)}>Enter the day’s readings</ButtonLink>
          <ButtonLink href={lineWallAddress(line.code)}>View for a wall</ButtonLink>
        </p>
      )}
      <Section heading="Logs">
        {open.some(({ states }) => states.length > 0) ? (
          <WorksLogTable logs={open.flatMap(({ states }) => states)} caption={`Logs of ${line.code}`} />
        ) : (
          <Empty title="Nothing is logged here yet">Open a machine, then a log of it.</Empty>
        )}
      </Section>
      <Section heading="Machines">
        <Machines line={line} actor={actor} />
        {isOpen && !refusal('open-machine', actor) && (
          <CommandForm
            action={openMachine}
            formKey={randomUUID()}
            hidden={{ line: line.code }}
            label="Open a machine"
            className="form-narrow"
          >
            <TextBox
              name="code"
              label="Code"
              hint="Such as “Wave 1”; of one machine only."
              maxLength={80}
              required
            />
            <ChoiceBox
              name="kind"
              label="What it is"
              choices={[
                { value: '', text: 'Choose …' },
                ...MACHINE_KINDS.map(({ value, label }) => ({ value, text: label })),
              ]}
            />
            <SubmitButton>Open the machine</SubmitButton>
          </CommandForm>
        )}
      </Section>
      <Section heading="Programmes made here" lead="A programme states its lines on its page of logs.">
        {line.stated.length > 0 ? (
          <ul>
            {line.stated.map(({ state: { programme } }) => (
              <li key={programme.id}>
                <a href={routeCardAddress(programme.code)}>{programme.code}</a>, {programme.title}
              </li>
            ))}
          </ul>
        ) : (
          <Empty title="None states this line">
            Production of a programme states it, on the programme’s page of logs.
          </Empty>
        )}
      </Section>
      <p>
        <a href={worksTrailAddress({ kind: 'line', code: line.code })}>Trail of this line</a>
      </p>
      {isOpen && !refusal('close-line', actor) && (
        <CloseForm what="line" code={line.code} action={closeLine} />
      )}
    </WorksSheet>
  )
}

function Machines({ line, actor }: { line: LineState; actor: Actor }) {
  if (line.machineStates.length === 0)
    return (
      <Empty title="No machine yet">
        <FirstStep first="First open a machine of the line." refused={refusal('open-machine', actor)} />
      </Empty>
    )
  return (
    <RuledTable
      caption="Machines of the line"
      captionHidden
      rows={line.machineStates}
      rowKey={({ id }) => id}
      columns={[
        { label: 'Machine', names: true, cell: ({ code }) => <a href={machineAddress(code)}>{code}</a> },
        { label: 'What it is', cell: ({ kind }) => machineKindName(kind) },
        { label: 'Logs', set: 'number', cell: ({ states }) => states.length },
        { label: 'Now', cell: ({ closedAt }) => (closedAt ? 'closed' : 'open') },
      ]}
    />
  )
}
