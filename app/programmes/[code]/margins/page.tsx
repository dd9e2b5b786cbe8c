import { findingAddress, itemAddress, marginsAddress, startAddress } from '@/app/addresses'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { marginText } from '@/app/ui/margin-text'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { verdictMark } from '@/app/ui/verdict-mark'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { specificationFactsFor } from '@/shared/gate/live-turns'
import { STAGE_NAMES, STAGES, type Stage } from '@/shared/plan/stage'
import { formatAgainst } from '@/shared/quantity/format'
import { MarginMap } from './margin-map'
import type { Tick } from './tick'
import { ticksOf } from './ticks-of'
import { valuesToTry } from './values-to-try'

export const generateMetadata = programmeTitle(({ code }) => `Margins, ${code}`)

/** All margins of a programme on one sheet: what is nearest to its limit, and what another value would do. */
export default programmePage(async ({ visit, code, searchParams: { stage } }) => {
  const all = ticksOf(visit.view.judgement)
  const shown = STAGES.find((one) => one === stage)
  const ticks = shown ? all.filter((tick) => tick.stage === shown) : all
  const values = valuesToTry(visit.view)
  const facts = specificationFactsFor(
    values.flatMap(({ key }) => findParameter(key) ?? []),
    visit.view.state.facts,
  )
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={marginsAddress(code)}
      title="Margins"
      supplement="Every finding with a margin, on one scale: how near each is to its limit"
      cells={[
        { label: 'Margins', value: ticks.length },
        { label: 'Beyond the limit', value: ticks.filter(({ verdict }) => verdict === 'fails').length },
        { label: 'Marginal', value: ticks.filter(({ verdict }) => verdict === 'marginal').length },
      ]}
    >
      {() =>
        all.length === 0 ? (
          <Empty title="No finding has a margin yet">
            <p>A margin is found once the values are stated that its check reads.</p>
            <p>
              <ButtonLink href={startAddress(code)}>State the first values</ButtonLink>
            </p>
          </Empty>
        ) : (
          <>
            <p className="section-lead">
              Each margin is a share of its own limit: at the right edge lies what is a whole limit inside or
              more. Where the limit is zero it counts in guard bands, four of them across.
            </p>
            <StageChoice code={code} shown={shown} ticks={all} />
            <MarginMap key={shown ?? ''} code={code} ticks={ticks} values={values} facts={facts} />
            <MarginTable code={code} ticks={ticks} />
          </>
        )
      }
    </ProgrammeSheet>
  )
})

const StageChoice = ({
  code,
  shown,
  ticks,
}: {
  code: string
  shown: Stage | undefined
  ticks: readonly Tick[]
}) => (
  <nav aria-label="Stage" className="margin-stages">
    <a href={marginsAddress(code)} aria-current={shown === undefined ? 'true' : undefined}>
      All stages ({ticks.length})
    </a>
    {STAGES.map((stage) => (
      <a
        key={stage}
        href={`${marginsAddress(code)}?stage=${stage}`}
        aria-current={shown === stage ? 'true' : undefined}
      >
        {STAGE_NAMES[stage]} ({ticks.filter((tick) => tick.stage === stage).length})
      </a>
    ))}
  </nav>
)

/** The same numbers in rows: for paper, and for whoever does not see the map. */
const MarginTable = ({ code, ticks }: { code: string; ticks: readonly Tick[] }) => (
  <Section
    id="numbers"
    heading="The same in numbers"
    lead="The nearest to its limit first; what is beyond it before that."
  >
    <RuledTable
      caption="Margins"
      captionHidden
      rows={ticks}
      rowKey={({ rule }) => rule}
      columns={[
        {
          label: 'Finding',
          names: true,
          cell: ({ rule, title }) => <a href={findingAddress(code, rule)}>{title}</a>,
        },
        { label: 'Item', cell: ({ itemKey, item }) => <a href={itemAddress(code, itemKey)}>{item}</a> },
        { label: 'Found', set: 'number', cell: ({ margin }) => numbersOf(margin).found },
        {
          label: 'Limit',
          set: 'number',
          cell: ({ margin }) => `${margin.direction} ${numbersOf(margin).limit}`,
        },
        { label: 'Margin', set: 'number', cell: ({ margin }) => marginText(margin) },
        { label: 'Verdict', set: 'shrink', cell: ({ verdict }) => verdictMark(verdict) },
      ]}
    />
  </Section>
)

const numbersOf = ({ found, limit, unit }: Tick['margin']) => formatAgainst(found, limit, unit)
