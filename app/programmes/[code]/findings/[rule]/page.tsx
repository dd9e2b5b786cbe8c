import { findRule } from '@/shared/catalogue/standard-plan'
import { notFound } from 'next/navigation'
import { itemAddress, routeCardAddress, whyAddress } from '@/app/addresses'
import { Comments } from '@/app/deliberation/comments'
import { NonconformitiesFrom } from '@/app/deliberation/open-nonconformity-from'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { WhereDrawn } from '@/app/findings/where-drawn'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ProposeFrom } from '@/app/lessons/propose-from'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { STAGE_NAMES } from '@/shared/plan/stage'
import { Concessions } from './concessions'
import { Inputs } from './inputs'

export const generateMetadata = programmeTitle<{ rule: string }>(
  ({ code, rule }) => `${findRule(rule)?.title ?? 'Finding'}, ${code}`,
)

/** One finding with its whole working, and the walk back from it to every input, its author and its reason. */
export default programmePage<{ rule: string }>(async ({ visit, code, params: { rule: id } }) => {
  const item = visit.view.state.items.find(({ definition }) =>
    definition.rules.some((rule) => rule.id === id),
  )
  const rule = item?.definition.rules.find((entry) => entry.id === id)
  const finding = visit.view.judgement.findings.get(id)
  if (!item || !rule || !finding) notFound()
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      item={item.definition.key}
      place={[
        { text: item.definition.title, href: itemAddress(code, item.definition.key) },
        { text: rule.title },
      ]}
      title={rule.title}
      supplement={rule.why}
      cells={[
        { label: 'Stage', value: STAGE_NAMES[item.definition.stage] },
        { label: 'Verdict', value: <VerdictMark verdict={finding.verdict} /> },
        { label: 'Version of the check', value: finding.version },
      ]}
    >
      {(view) => (
        <>
          <FindingSheet title="The finding" finding={finding} code={view.code} open>
            <WhereDrawn code={view.code} rule={id} />
          </FindingSheet>
          <Section
            heading="Inputs to this check"
            lead="Every input the rule declares, as it stands, with who set it and on what grounds."
            aside={
              <a href={whyAddress(view.code, { kind: 'finding', key: id })}>
                Why is this so? The whole chain
              </a>
            }
          >
            <Inputs view={view} rule={rule} />
          </Section>
          <Comments view={view} subjects={[{ kind: 'finding', key: id }]} item={item.definition.key} />
          <Concessions view={view} item={item.definition.key} rule={rule} finding={finding} />
          <NonconformitiesFrom view={view} source={{ kind: 'finding', key: id }} />
          <ProposeFrom view={view} kind="finding" what="this finding" id={id} />
        </>
      )}
    </ProgrammeSheet>
  )
})
