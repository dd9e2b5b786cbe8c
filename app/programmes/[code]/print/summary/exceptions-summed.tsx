import { concessionAddress, findingAddress, itemAddress, limitAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALL_LIMITS, findRule } from '@/shared/catalogue/standard-plan'
import { boundInWords } from '@/shared/commands/named'
import { concessionStatus, isAlive } from '@/shared/gate/concession'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Finding, Verdict } from '@/shared/rules/finding'
import { fewOf } from './few-of'

const MOST = 8
/** What a reader of exceptions looks at, the worst first. */
const EXCEPTIONAL: readonly Verdict[] = ['fails', 'marginal']

/** What fails or hardly meets, what is let pass by a concession, and where a limit is looser than usual. */
export function ExceptionsSummed({ view }: { view: ProgrammeView }) {
  return (
    <Section
      heading="Exceptions"
      lead="Findings that fail or hardly meet, concessions, limits looser than the default, items left out."
    >
      <FindingsSummed view={view} />
      <ConcessionsSummed view={view} />
      <LooserLimits view={view} />
      <LeftOut view={view} />
    </Section>
  )
}

function FindingsSummed({ view: { code, judgement } }: { view: ProgrammeView }) {
  const all = EXCEPTIONAL.flatMap((verdict) =>
    [...judgement.findings.values()].filter((finding) => finding.verdict === verdict),
  )
  const undetermined = [...judgement.findings.values()].filter(({ verdict }) => verdict === 'undetermined')
  const { shown, rest } = fewOf<Finding>(all, MOST)
  return (
    <>
      {shown.length > 0 ? (
        <RuledTable
          caption="Findings"
          rows={shown}
          rowKey={({ rule }) => rule}
          columns={[
            {
              label: 'Finding',
              names: true,
              cell: ({ rule }) => <a href={findingAddress(code, rule)}>{findRule(rule)?.title ?? rule}</a>,
            },
            { label: 'Verdict', set: 'shrink', cell: ({ verdict }) => <VerdictMark verdict={verdict} /> },
            { label: 'Found', cell: ({ found }) => found },
            { label: 'Limit', cell: ({ limit }) => limit },
          ]}
        />
      ) : (
        <p>No finding fails or is marginal.</p>
      )}
      {rest}
      {undetermined.length > 0 && (
        <p>
          {undetermined.length} of {judgement.findings.size} findings are undetermined: what they need is not
          recorded.
        </p>
      )}
    </>
  )
}

function ConcessionsSummed({ view: { code, state, judgement } }: { view: ProgrammeView }) {
  const statusOf = (entry: (typeof state.concessions)[number]) =>
    concessionStatus(entry, judgement.findings.get(entry.rule), state.facts)
  const { shown, rest } = fewOf(
    state.concessions.filter((entry) => isAlive(statusOf(entry))),
    MOST,
  )
  if (shown.length === 0) return <p>No concession is in force or asked for.</p>
  return (
    <>
      <RuledTable
        caption="Concessions"
        rows={shown}
        rowKey={({ number }) => number}
        columns={[
          {
            label: 'Concession',
            names: true,
            cell: ({ number, rule }) => (
              <a href={concessionAddress(code, number)}>
                {number}, {findRule(rule)?.title ?? rule}
              </a>
            ),
          },
          { label: 'Why', cell: ({ why }) => why },
          {
            label: 'For',
            cell: ({ quantity, untilOn }) => (
              <>
                {quantity === null ? 'any number' : `${quantity} boards`}
                {untilOn && (
                  <>
                    , until <Day at={untilOn} />
                  </>
                )}
              </>
            ),
          },
          { label: 'Status', set: 'shrink', cell: statusOf },
          {
            label: 'Signed',
            cell: ({ design, quality }) =>
              [design, quality].flatMap((signed) => signed?.byName ?? []).join('; ') || 'nobody yet',
          },
        ]}
      />
      {rest}
    </>
  )
}

function LooserLimits({ view: { code, state } }: { view: ProgrammeView }) {
  const looser = ALL_LIMITS.map((limit) => governingRequirement(limit, state.facts.requirements)).filter(
    ({ relaxed }) => relaxed,
  )
  const { shown, rest } = fewOf(looser, MOST)
  if (shown.length === 0) return <p>No limit is looser than its default.</p>
  return (
    <>
      <RuledTable
        caption="Limits looser than the default"
        rows={shown}
        rowKey={({ limit }) => limit.key}
        columns={[
          {
            label: 'Limit',
            names: true,
            cell: ({ limit }) => <a href={limitAddress(code, limit.key)}>{limit.label}</a>,
          },
          { label: 'In force', cell: ({ limit, value }) => boundInWords(limit.key, value) },
          { label: 'By', cell: ({ document, authority }) => `${document} (${authority})` },
        ]}
      />
      {rest}
    </>
  )
}

function LeftOut({ view: { code, state } }: { view: ProgrammeView }) {
  const items = state.items.filter(({ tailoredOut }) => tailoredOut?.agreed)
  const { shown, rest } = fewOf(items, MOST)
  if (shown.length === 0) return null
  return (
    <>
      <RuledTable
        caption="Items not applicable"
        rows={shown}
        rowKey={({ definition }) => definition.key}
        columns={[
          {
            label: 'Item',
            names: true,
            cell: ({ definition }) => <a href={itemAddress(code, definition.key)}>{definition.title}</a>,
          },
          { label: 'Why', cell: ({ tailoredOut }) => tailoredOut?.reason },
          {
            label: 'Proposed and agreed by',
            cell: ({ tailoredOut }) => `${tailoredOut?.proposedByName}, ${tailoredOut?.agreed?.byName}`,
          },
        ]}
      />
      {rest}
    </>
  )
}
