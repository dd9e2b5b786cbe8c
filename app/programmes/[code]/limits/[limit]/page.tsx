import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { itemAddress, specificationAddress, whyAddress } from '@/app/addresses'
import { AgainstDefault } from '@/app/findings/limit-table'
import { Dependents } from '@/app/findings/dependents'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { Quantity } from '@/app/ui/quantity'
import { Section } from '@/app/ui/section'
import { readRuleDifferences } from '@/lib/queries/company-rules'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { readRequirements } from '@/lib/queries/requirements'
import { lapsedByLimit } from '@/shared/gate/lapsed-signatures'
import { findLimit, itemHolding, rulesReading } from '@/shared/catalogue/standard-plan'
import { governingRequirement } from '@/shared/plan/requirement'
import { governingInWords } from '@/shared/plan/governing-in-words'
import { refusal } from '@/shared/policy'
import { RuleDifferences } from '../../company-rules/rule-differences'
import { Layers } from './layers'
import { StateForm } from './requirement-forms'
import { Stated } from './stated'

export const generateMetadata = programmeTitle<{ limit: string }>(
  ({ code, limit }) => `${findLimit(limit)?.label ?? 'Limit'}, ${code}`,
)

/** One limit: its layers, which of them rules and why, and the form to lay another. */
export default programmePage<{ limit: string }>(async ({ visit, code, params: { limit: key } }) => {
  const limit = findLimit(addressPart(key))
  const item = limit && itemHolding.limit(limit.key)
  if (!limit || !item) notFound()
  const governing = governingRequirement(limit, visit.view.state.facts.requirements)
  const { id } = visit.view.state.programme
  const [stated, studies, differences] = await Promise.all([
    readRequirements(id, limit.key),
    readOptionStudies(id, item.key),
    readRuleDifferences(id, limit.key),
  ])
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={specificationAddress(code)}
      place={[{ text: 'Specification', href: specificationAddress(code) }, { text: limit.label }]}
      title={limit.label}
      supplement={`A limit: ${limit.direction === 'at most' ? 'smaller is stricter' : 'larger is stricter'}`}
      cells={[
        {
          label: 'In force',
          value: (
            <>
              {limit.direction} <Quantity value={governing.value} unit={limit.unit} />
            </>
          ),
        },
        { label: 'Against the default', value: <AgainstDefault governing={governing} /> },
        { label: 'Item', value: <a href={itemAddress(code, item.key)}>{item.title}</a> },
      ]}
    >
      {(view) => {
        const refused = refusal('state-requirement', view.actor)
        const mayWithdraw = !refusal('withdraw-requirement', view.actor)
        return (
          <>
            {governing.conflict && (
              <Notice kind="warning" title="Two layers of one authority disagree">
                The stricter one rules. Withdraw the one that does not hold.
              </Notice>
            )}
            <Section
              heading="Layers"
              lead={governingInWords(governing)}
              aside={<a href={whyAddress(code, { kind: 'limit', key: limit.key })}>Why is this so?</a>}
            >
              <Layers limit={limit} governing={governing} />
            </Section>
            <RuleDifferences view={view} differences={differences} />
            <Section heading="Affected if this changes">
              <Dependents
                view={view}
                rules={rulesReading(limit.key)}
                reach={lapsedByLimit(limit.key, view.judgement)}
              />
            </Section>
            {stated.length > 0 && (
              <Section heading="Stated and withdrawn">
                <Stated
                  programme={code}
                  limit={limit}
                  stated={stated}
                  studies={studies}
                  mayWithdraw={mayWithdraw}
                />
              </Section>
            )}
            <Section heading="Add a requirement">
              {refused ? (
                <p className="field-hint">{refused}</p>
              ) : (
                <StateForm programme={code} limit={limit} />
              )}
            </Section>
          </>
        )
      }}
    </ProgrammeSheet>
  )
})
