import { randomUUID } from 'node:crypto'
import { notFound } from 'next/navigation'
import { findingAddress, itemAddress, routeCardAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, SignatureBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { Stamp, StampPlace } from '@/app/ui/stamp'
import { SubmitButton } from '@/app/ui/submit-button'
import { concessionStanding } from '@/shared/gate/concession'
import { concessionGrantRefusal } from '@/shared/gate/separation'
import { findRule } from '@/shared/plan/catalogue'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { grantConcession, refuseConcession } from './actions'

interface ConcessionPageProps {
  params: Promise<{ code: string; concession: string }>
}

/** One concession: the failing finding, why it may pass, for how long, and its two signatures. */
export default async function ConcessionPage({ params }: ConcessionPageProps) {
  const { code: asked, concession: number } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const concession = visit.view?.state.concessions.find((entry) => String(entry.number) === number)
  if (visit.view && !concession) notFound()
  const finding = concession && visit.view?.judgement.findings.get(concession.rule)
  const standing =
    concession && visit.view && concessionStanding(concession, finding, visit.view.state.facts.today)
  const title = `Concession ${number}`
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[
        ...(concession
          ? [
              {
                text: findRule(concession.rule)?.title ?? concession.rule,
                href: findingAddress(code, concession.rule),
              },
            ]
          : []),
        { text: title },
      ]}
      title={title}
      supplement={concession && <a href={itemAddress(code, concession.itemKey)}>On the item it concerns</a>}
      cells={
        concession
          ? [
              { label: 'Asked by', value: concession.requestedByName },
              {
                label: 'For',
                value: concession.quantity === null ? 'any number' : `${concession.quantity} boards`,
              },
              { label: 'Until', value: concession.untilOn ?? 'no last day' },
              { label: 'Standing', value: standing },
            ]
          : []
      }
    >
      {(view) =>
        concession && (
          <>
            <p className="prose">{concession.why}</p>
            {concession.refused && (
              <Notice kind="refusal" title={`Refused by ${concession.refused.byName}`}>
                {concession.refused.why}
              </Notice>
            )}
            {finding && (
              <FindingSheet
                title={findRule(concession.rule)?.title ?? concession.rule}
                href={findingAddress(code, concession.rule)}
                finding={finding}
                code={view.code}
              />
            )}
            <Section
              heading="Signatures"
              lead="Design and quality sign; neither signature comes from one person for both, and quality’s not from who asked."
            >
              <div className="stamp-row">
                {(['design', 'quality'] as const).map((department) => {
                  const signed = concession[department]
                  return signed ? (
                    <Stamp
                      key={department}
                      department={department}
                      meaning="Concession granted"
                      name={signed.byName}
                      at={signed.at}
                      digest={concession.findingDigest}
                      state={standing === 'granted' || standing === 'asked' ? 'stands' : 'void'}
                    />
                  ) : (
                    <StampPlace key={department} department={department} wanted="not signed yet" />
                  )
                })}
              </div>
              {standing === 'asked' &&
                view.actor.departments
                  .filter(
                    (department) => !concessionGrantRefusal(concession, view.actor.personId, department),
                  )
                  .map((department) => (
                    <CommandForm
                      key={department}
                      action={grantConcession}
                      formKey={randomUUID()}
                      hidden={{ programme: view.code, concession: number, department }}
                      label={`Grant for ${DEPARTMENT_NAMES[department]}`}
                      className="form-narrow"
                    >
                      <SignatureBox
                        meaning={`You let this failing finding pass for ${DEPARTMENT_NAMES[department]}, within the bounds above.`}
                        hasPassword={visit.person.hasPassword}
                      />
                      <SubmitButton>Grant for {DEPARTMENT_NAMES[department]}</SubmitButton>
                    </CommandForm>
                  ))}
              {!concession.refused && !refusal('refuse-concession', view.actor) && (
                <CommandForm
                  action={refuseConcession}
                  formKey={randomUUID()}
                  hidden={{ programme: view.code, concession: number }}
                  label="Refuse the concession"
                  className="form-narrow"
                >
                  <LinesBox name="reason" label="Why not" rows={2} required />
                  <SubmitButton kind="danger">
                    {standing === 'granted' ? 'Take the concession back' : 'Refuse'}
                  </SubmitButton>
                </CommandForm>
              )}
            </Section>
          </>
        )
      }
    </ProgrammeSheet>
  )
}
