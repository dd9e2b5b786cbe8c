import { randomUUID } from 'node:crypto'
import { lineAddress, worksAddress } from '@/app/addresses'
import { leaveLine, stateLine } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { LinesOfProgramme } from '@/lib/queries/works/programme-lines'
import { refusal } from '@/shared/policy'

/** The lines of the works that the boards are made on; stated and left by production. */
export function ProgrammeLines({ view, lines }: { view: ProgrammeView; lines: LinesOfProgramme }) {
  const mayState = !refusal('state-line', view.actor)
  return (
    <Section
      id="lines"
      heading="Lines of the works"
      lead="A soldering run names its line; what the line’s machines log counts for the days on which it ran there."
    >
      {lines.stated.length > 0 ? (
        <RuledTable
          caption="Lines stated"
          captionHidden
          rows={lines.stated}
          rowKey={({ code }) => code}
          columns={[
            {
              label: 'Line',
              names: true,
              cell: ({ code, name }) => (
                <>
                  <a href={lineAddress(code)}>{code}</a>, {name}
                </>
              ),
            },
            { label: 'Since', set: 'shrink', cell: ({ since }) => <Day at={since} /> },
            {
              label: 'Now',
              cell: ({ code, leftAt }) =>
                leftAt ? (
                  <>
                    left <Day at={leftAt} />
                  </>
                ) : mayState ? (
                  <LeaveLine programme={view.code} line={code} />
                ) : (
                  'made here'
                ),
            },
          ]}
        />
      ) : (
        <Empty title="No line is stated yet">
          <FirstStep
            first={
              lines.others.length > 0
                ? 'First state the line that the boards are made on.'
                : 'First a line of the works is opened, then stated here.'
            }
            refused={refusal('state-line', view.actor)}
            {...(lines.others.length === 0 && { href: worksAddress(), does: 'Open a line of the works' })}
          />
        </Empty>
      )}
      {mayState && <StateLine view={view} lines={lines} />}
    </Section>
  )
}

function StateLine({ view, lines }: { view: ProgrammeView; lines: LinesOfProgramme }) {
  if (lines.others.length === 0)
    return lines.stated.length === 0 ? null : (
      <p>
        There is no other line to state. Lines are opened on the page of the{' '}
        <a href={worksAddress()}>works</a>.
      </p>
    )
  return (
    <CommandForm
      action={stateLine}
      formKey={randomUUID()}
      hidden={{ programme: view.code }}
      label="State a line"
      className="form-narrow"
    >
      <ChoiceBox
        name="line"
        label="Made on line"
        choices={lines.others.map(({ code, name }) => ({ value: code, text: `${code}, ${name}` }))}
      />
      <SubmitButton>State the line</SubmitButton>
    </CommandForm>
  )
}

const LeaveLine = ({ programme, line }: { programme: string; line: string }) => (
  <Disclosure summary={`Not made on ${line} any more`} printed={false}>
    <CommandForm
      action={leaveLine}
      formKey={randomUUID()}
      hidden={{ programme, line }}
      label={`Leave ${line}`}
      className="form-narrow"
    >
      <TextBox name="reason" label="Reason" maxLength={1000} required />
      <SubmitButton>Leave the line</SubmitButton>
    </CommandForm>
  </Disclosure>
)
