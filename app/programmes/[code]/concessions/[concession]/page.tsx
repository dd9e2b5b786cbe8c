import { notFound } from 'next/navigation'
import { concessionsAddress, findingAddress, itemAddress, routeCardAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import { departureInWords } from '@/shared/commands/signatures/departure-in-words'
import { boardsUnder, concessionName, concessionStatus, covers, isPermit } from '@/shared/gate/concession'
import { PASSES } from '@/shared/rules/finding'
import { findRule } from '@/shared/catalogue/standard-plan'
import { Signatures } from './signatures'

export const generateMetadata = programmeTitle<{ concession: string }>(
  ({ code, concession }) => `Concession ${concession}, ${code}`,
)

/** One concession or deviation permit: the finding, why it may pass or depart, for how long, and its two signatures. */
export default programmePage<{ concession: string }>(
  async ({ visit, code, params: { concession: number } }) => {
    const concession = visit.view.state.concessions.find((entry) => String(entry.number) === number)
    if (!concession) notFound()
    const finding = visit.view.judgement.findings.get(concession.rule)
    const status = concessionStatus(concession, finding, visit.view.state.facts)
    const title = concessionName(concession)
    const used = boardsUnder(concession, visit.view.state.facts)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={routeCardAddress(code)}
        place={[
          { text: 'Concessions and deviation permits', href: concessionsAddress(code) },
          {
            text: findRule(concession.rule)?.title ?? concession.rule,
            href: findingAddress(code, concession.rule),
          },
          { text: title },
        ]}
        title={title}
        supplement={<a href={itemAddress(code, concession.itemKey)}>On the item it concerns</a>}
        cells={[
          { label: 'Asked by', value: concession.requestedByName },
          {
            label: 'For',
            value:
              concession.quantity === null
                ? 'any number'
                : `${concession.quantity} boards${used === undefined ? '' : `, ${used} soldered since`}`,
          },
          { label: 'Until', value: concession.untilOn ?? 'no last day' },
          { label: 'Status', value: status },
        ]}
      >
        {(view) => (
          <>
            {concession.permit && (
              <p className="prose">
                <strong>{departureInWords(concession.permit)}</strong>
              </p>
            )}
            <p className="prose">{concession.why}</p>
            {concession.refused && (
              <Notice kind="refusal" title={`Refused by ${concession.refused.byName}`}>
                {concession.refused.why}
              </Notice>
            )}
            {status === 'no longer about this finding' && (
              <Notice kind="warning" title="The finding has changed">
                What was asked for is not what is found today: another number, or another part. It lets
                nothing pass; ask again if the finding still fails.
              </Notice>
            )}
            {status === 'used up' && (
              <Notice kind="warning" title="More boards were soldered than it was granted for">
                It lets nothing pass any more. Ask for another, or for a concession on what was found.
              </Notice>
            )}
            {isPermit(concession) && status === 'granted' && finding && !PASSES[finding.verdict] && (
              <WhetherWithin within={covers(concession, finding, view.state)} />
            )}
            {finding && (
              <Section heading="The finding as it stands">
                <FindingSheet
                  title={findRule(concession.rule)?.title ?? concession.rule}
                  href={findingAddress(code, concession.rule)}
                  finding={finding}
                  code={view.code}
                />
              </Section>
            )}
            <Signatures
              view={view}
              concession={concession}
              status={status}
              hasPassword={visit.person.hasPassword}
            />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)

/** Whether the finding that has come is what was permitted. */
const WhetherWithin = ({ within }: { within: boolean }) =>
  within ? (
    <Notice kind="success" title="The finding lies within what is permitted">
      It passes under this permit.
    </Notice>
  ) : (
    <Notice kind="warning" title="The finding goes beyond what is permitted">
      It departs farther, in another way, or for something that is not named. Mend it, or ask for a
      concession.
    </Notice>
  )
