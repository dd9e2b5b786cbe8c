import { randomUUID } from 'node:crypto'
import {
  lineAddress,
  lineDayAddress,
  lineWallAddress,
  machineLogAddress,
  worksAddress,
} from '@/app/addresses'
import { openLine } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { LineState } from '@/lib/queries/works/line-states'
import { readWorksHome } from '@/lib/queries/works/works-home'
import { refusal } from '@/shared/policy'
import { RunningOut } from './running-out'
import { WorksLogTable } from './log-table'
import { visitWorks } from './visit-works'
import { WorksSheet } from './works-sheet'

export const metadata = { title: 'Works – Liquidus' }

/** What whoever runs the lines opens in the morning: each line with its last readings, what is due, what is open. */
export default async function WorksPage() {
  const { person, actor } = await visitWorks(worksAddress())
  const { lines, endings, today, mark } = await readWorksHome()
  const open = lines.filter(({ closedAt }) => closedAt === null)
  const logs = open.flatMap(logsOf)
  const mayOpen = !refusal('open-line', actor)
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title="Works"
      newsSince={mark}
      supplement="What the lines are doing, against what today’s programmes specify"
      cells={[
        { label: 'Lines', value: open.length },
        { label: 'Readings overdue', value: logs.filter(({ due }) => due?.isOverdue).length },
        { label: 'Outside a window', value: logs.filter(isOutside).length },
        { label: 'Signals open', value: logs.reduce((sum, { openSignals }) => sum + openSignals, 0) },
      ]}
    >
      <AttentionList logs={logs} />
      <RunningOut endings={endings} today={today} />
      {open.length === 0 && (
        <Empty title="No line yet">
          A line has a code and machines; its programmes state it, and what its machines log counts for each
          of them on the days on which it runs there.
          <FirstStep first="First open a line." refused={refusal('open-line', actor)} />
        </Empty>
      )}
      {open.map((line) => (
        <Section
          key={line.code}
          heading={
            <a href={lineAddress(line.code)}>
              {line.code}: {line.name}
            </a>
          }
          lead={statedBy(line)}
          aside={
            <span className="mark-row">
              <ButtonLink href={lineDayAddress(line.code)}>Enter the day’s readings</ButtonLink>
              <ButtonLink href={lineWallAddress(line.code)} kind="plain">
                View for a wall
              </ButtonLink>
            </span>
          }
        >
          {logsOf(line).length > 0 ? (
            <WorksLogTable logs={logsOf(line)} caption={`Logs of ${line.code}`} />
          ) : (
            <Empty title="Nothing is logged here yet">
              <FirstStep
                first="First open a machine on this line, then a log of it."
                refused={refusal('open-machine', actor)}
                href={lineAddress(line.code)}
                does={`Open a machine of ${line.code}`}
              />
            </Empty>
          )}
        </Section>
      ))}
      {mayOpen && (
        <Section heading="Open a line">
          <CommandForm action={openLine} formKey={randomUUID()} label="Open a line" className="form-narrow">
            <TextBox
              name="code"
              label="Code"
              hint="As soldering runs name it, such as L1."
              maxLength={80}
              required
            />
            <TextBox name="name" label="Name" hint="Such as “wave soldering line”." maxLength={80} required />
            <SubmitButton>Open the line</SubmitButton>
          </CommandForm>
        </Section>
      )}
      <ClosedLines lines={lines.filter(({ closedAt }) => closedAt !== null)} />
    </WorksSheet>
  )
}

const logsOf = ({ machineStates }: LineState) =>
  machineStates.filter(({ closedAt }) => closedAt === null).flatMap(({ states }) => states)

const isOutside = ({ against }: ReturnType<typeof logsOf>[number]): boolean =>
  against.some(({ verdict }) => verdict === 'fails')

const statedBy = ({ stated }: LineState): string =>
  stated.length === 0
    ? 'No programme states this line.'
    : `Made here: ${stated.map(({ state }) => state.programme.code).join(', ')}.`

/** What wants somebody now, first of all: outside a window, overdue, a signal without a cause. */
function AttentionList({ logs }: { logs: ReturnType<typeof logsOf> }) {
  const wanted = logs.flatMap((log) => {
    const outside = log.against.filter(({ verdict }) => verdict === 'fails').map(({ programme }) => programme)
    const reasons = [
      ...(outside.length > 0 ? [`outside the window of ${outside.join(', ')}`] : []),
      ...(log.due?.isOverdue ? ['a reading is overdue'] : []),
      ...(log.openSignals > 0 ? [`${log.openSignals} signals without a cause`] : []),
    ]
    return reasons.length > 0 ? [{ log, reasons }] : []
  })
  if (wanted.length === 0) return null
  return (
    <Section heading="Wants somebody now">
      <ul>
        {wanted.map(({ log, reasons }) => (
          <li key={log.id}>
            <a href={machineLogAddress(log.machine, log.name)}>
              {log.name}, {log.machine}
            </a>
            : {reasons.join('; ')}
          </li>
        ))}
      </ul>
    </Section>
  )
}

function ClosedLines({ lines }: { lines: readonly LineState[] }) {
  if (lines.length === 0) return null
  return (
    <Section heading="Closed lines">
      <ul>
        {lines.map(({ code, name }) => (
          <li key={code}>
            <a href={lineAddress(code)}>
              {code}: {name}
            </a>
          </li>
        ))}
      </ul>
    </Section>
  )
}
