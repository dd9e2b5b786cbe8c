import { notFound } from 'next/navigation'
import { findingAddress, itemAddress, specificationAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { ButtonLink } from '@/app/ui/button'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { ParameterValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { readRevisions } from '@/lib/queries/revisions'
import { findParameter, itemHolding, rulesReading } from '@/shared/plan/catalogue'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

interface ParameterPageProps {
  params: Promise<{ code: string; parameter: string }>
}

/** One parameter: what hangs on it, and every value it ever had. */
export default async function ParameterPage({ params }: ParameterPageProps) {
  const { code: asked, parameter: key } = await params
  const parameter = findParameter(decodeURIComponent(key))
  const item = parameter && itemHolding.parameter(parameter.key)
  if (!parameter || !item) notFound()
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const revisions = visit.view ? await readRevisions(visit.view.state.programme.id, parameter.key) : []
  const readers = rulesReading(parameter.key)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={specificationAddress(code)}
      place={[{ text: 'Specification', href: specificationAddress(code) }, { text: parameter.label }]}
      title={parameter.label}
      supplement={parameter.help}
      cells={[
        { label: 'Owner', value: DEPARTMENT_NAMES[parameter.owner] },
        { label: 'Item', value: <a href={itemAddress(code, item.key)}>{item.title}</a> },
        { label: 'Revisions', value: revisions.length },
      ]}
    >
      {(view) => (
        <>
          <Section
            heading="As specified"
            aside={
              <ButtonLink href={`${itemAddress(code, item.key)}#${parameter.key}`}>
                Revise it on its item
              </ButtonLink>
            }
          >
            <ParameterValue parameter={parameter} value={view.state.facts.values.get(parameter.key)} />
          </Section>
          <Section heading="What hangs on it">
            {readers.length > 0 ? (
              <RuledTable
                caption="Findings that read it"
                captionHidden
                rows={readers}
                rowKey={({ id }) => id}
                columns={[
                  {
                    label: 'Finding',
                    names: true,
                    cell: ({ id, title }) => <a href={findingAddress(code, id)}>{title}</a>,
                  },
                  {
                    label: 'Verdict',
                    set: 'shrink',
                    cell: ({ id }) => (
                      <VerdictMark verdict={view.judgement.findings.get(id)?.verdict ?? 'undetermined'} />
                    ),
                  },
                  { label: 'Item', cell: ({ id }) => itemHolding.rule(id)?.title },
                ]}
              />
            ) : (
              <p>No finding reads it; it is covered by the approvals of its item.</p>
            )}
          </Section>
          <Section heading="Revisions">
            {revisions.length > 0 ? (
              <RuledTable
                caption="Revisions"
                captionHidden
                rows={revisions}
                rowKey={({ number }) => number}
                columns={[
                  { label: 'No.', set: 'shrink', cell: ({ number }) => number },
                  {
                    label: 'Value',
                    names: true,
                    cell: ({ value }) => <ParameterValue parameter={parameter} value={value} />,
                  },
                  {
                    label: 'By',
                    cell: ({ author, at }) => (
                      <>
                        {author}, <Day at={at} />
                      </>
                    ),
                  },
                  { label: 'Why', cell: ({ reason }) => reason },
                ]}
              />
            ) : (
              <Empty title="Not specified yet" />
            )}
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
}
