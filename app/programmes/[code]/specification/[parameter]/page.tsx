import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import {
  fileAddress,
  itemAddress,
  reviseAddress,
  specificationAddress,
  tableAddress,
  whyAddress,
} from '@/app/addresses'
import { Dependents } from '@/app/findings/dependents'
import { Comments } from '@/app/deliberation/comments'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { ParameterValue } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { readRevisions } from '@/lib/queries/revisions'
import { lapsedByParameter } from '@/shared/gate/lapsed-signatures'
import { findParameter, itemHolding, rulesReading } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import type { ItemDefinition } from '@/shared/catalogue/item'
import { Revisions } from './revisions'

export const generateMetadata = programmeTitle<{ parameter: string }>(
  ({ code, parameter }) => `${findParameter(parameter)?.label ?? 'Parameter'}, ${code}`,
)

/** One parameter: what depends on it, and every value it ever had. */
export default programmePage<{ parameter: string }>(async ({ visit, code, params: { parameter: key } }) => {
  const parameter = findParameter(addressPart(key))
  const item = parameter && itemHolding.parameter(parameter.key)
  if (!parameter || !item) notFound()
  const { id } = visit.view.state.programme
  const [revisions, studies] = await Promise.all([
    readRevisions(id, parameter.key),
    readOptionStudies(id, item.key),
  ])
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
        { label: 'Revisions', value: revisions[0]?.number ?? 0 },
      ]}
    >
      {(view) => (
        <>
          <Section
            heading="As specified"
            aside={
              !refusal('revise-parameter', view.actor, parameter) && (
                <ButtonLink href={reviseAddress(code, item.key, parameter.key)}>
                  {revisions.length > 0 ? 'Revise it' : 'Specify it'}
                </ButtonLink>
              )
            }
          >
            <ParameterValue
              parameter={parameter}
              value={view.state.facts.values.get(parameter.key)}
              take={tableAddress(code, 'parameter', parameter.key)}
            />
            <EvidenceOf view={view} item={item} />
          </Section>
          <Section heading="Affected if this changes">
            <Dependents
              view={view}
              rules={rulesReading(parameter.key)}
              reach={lapsedByParameter(parameter.key, view.judgement)}
            />
          </Section>
          <Comments view={view} subjects={[{ kind: 'parameter', key: parameter.key }]} item={item.key} />
          <Section
            heading="Revisions"
            aside={<a href={whyAddress(code, { kind: 'value', key: parameter.key })}>Why is this so?</a>}
          >
            <Revisions code={code} parameter={parameter} revisions={revisions} studies={studies} />
          </Section>
        </>
      )}
    </ProgrammeSheet>
  )
})

/** Evidence is attached to items, so that a value's is that of its item. */
function EvidenceOf({ view, item }: { view: ProgrammeView; item: ItemDefinition }) {
  const entries = view.state.evidence.filter(({ itemKey }) => itemKey === item.key)
  if (entries.length === 0) return null
  return (
    <p>
      Evidence on its item:{' '}
      {entries.map(({ id, fileName, url, kind }, position) => (
        <span key={id}>
          {position > 0 && '; '}
          <a href={url ?? fileAddress(view.code, id)} rel="noreferrer">
            {fileName ?? url}
          </a>{' '}
          ({kind})
        </span>
      ))}
    </p>
  )
}
