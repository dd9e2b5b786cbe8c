import { randomUUID } from 'node:crypto'
import { signListAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { adoptChangeNotice, closeChangeNotice } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { NoticeStanding } from '@/shared/gate/change-notice'
import { refusal } from '@/shared/policy'

interface DispositionPartProps {
  view: ProgrammeView
  standing: NoticeStanding
}

/** What became of the notice; while it is open, the forms that decide it. */
export function DispositionPart({ view, standing }: DispositionPartProps) {
  const { disposition } = standing.notice
  return (
    <Section id="disposition" heading="Disposition">
      {disposition ? (
        <p>
          <strong>{disposition.kind}</strong> by {disposition.byName}, <Day at={disposition.at} />:{' '}
          {disposition.why}
        </p>
      ) : (
        <Deciding view={view} standing={standing} />
      )}
      {disposition?.kind === 'adopted' && (
        <p>
          <a href={signListAddress(view.code)}>Approvals to sign after the change</a>
        </p>
      )}
    </Section>
  )
}

function Deciding({ view, standing }: DispositionPartProps) {
  const { notice, digest } = standing
  const named = { programme: view.code, notice: notice.number }
  const refused = refusal('adopt-change-notice', view.actor, standing)
  return (
    <>
      {refused ? (
        <p className="field-hint">It cannot be adopted by you now. {refused}</p>
      ) : (
        <CommandForm
          action={adoptChangeNotice}
          formKey={randomUUID()}
          hidden={{ ...named, digest }}
          label="Adopt the notice"
          className="form-narrow"
        >
          <LinesBox name="reason" label="Why it is adopted" rows={2} required />
          <SubmitButton>Make all {notice.changes.length} changes</SubmitButton>
        </CommandForm>
      )}
      {(['refused', 'withdrawn'] as const).map((disposition) => {
        if (refusal('close-change-notice', view.actor, { standing, disposition })) return null
        const verb = disposition === 'refused' ? 'Refuse' : 'Withdraw'
        return (
          <CommandForm
            key={disposition}
            action={closeChangeNotice}
            formKey={randomUUID()}
            hidden={{ ...named, disposition }}
            label={`${verb} the notice`}
          >
            <AnsweredDisclosure summary={`${verb} the notice`}>
              <div className="form-narrow">
                <LinesBox name="reason" label={`Why it is ${disposition}`} rows={2} required />
                <SubmitButton kind="danger">{verb} the notice</SubmitButton>
              </div>
            </AnsweredDisclosure>
          </CommandForm>
        )
      })}
    </>
  )
}
