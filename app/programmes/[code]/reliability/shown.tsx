import { findingAddress, inspectionsAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { successRun } from '@/shared/reliability/life-tests-shown'
import type { Known } from './known'

/** What joints of this programme have shown, each by its own finding or working. */
export function Shown({ view, known }: { view: ProgrammeView; known: Known }) {
  const { code, judgement } = view
  const finding = (rule: string) => judgement.findings.get(rule)
  const found = (rule: string, what: string) => ({
    what,
    href: findingAddress(code, rule),
    verdict: finding(rule)?.verdict,
    message: finding(rule)?.found ?? 'not in the plan',
  })
  const rows = [
    found('defects-against-budget', 'Joints inspected, with the exact bound'),
    found('microsections-sound', 'Joints cut open'),
    found('reliability-demonstrated', 'Life test, chi-square demonstration'),
    {
      what: 'Life test, success run',
      href: undefined,
      verdict: undefined,
      message: successRunMessage(known),
    },
    found('field-returns', 'Service, with exact bounds'),
  ]
  return (
    <Section
      heading="Shown"
      lead={
        <>
          By joints of this programme that were <a href={inspectionsAddress(code)}>seen</a>, cut, tested or
          that serve.
        </>
      }
    >
      <RuledTable
        caption="What is shown"
        captionHidden
        narrow="cards-early"
        rows={rows}
        rowKey={({ what }) => what}
        columns={[
          {
            label: 'By',
            names: true,
            cell: ({ what, href }) => (href ? <a href={href}>{what}</a> : what),
          },
          { label: 'What it shows', cell: ({ message }) => message },
          {
            label: 'Verdict',
            set: 'shrink',
            cell: ({ verdict }) => (verdict ? <VerdictMark verdict={verdict} /> : '–'),
          },
        ]}
      />
    </Section>
  )
}

function successRunMessage({ specimens, target }: Known): string {
  if (specimens.length === 0) return 'No life test is on record.'
  const run = successRun(specimens, target)
  if (!run)
    return target.lifeCycles === undefined
      ? 'How many cycles a service life has is not specified.'
      : 'No specimen has run a whole service life yet.'
  const share = (survival: number): string => formatQuantity(survival * 100, '%', 5)
  return `${run.specimens - run.failed} of ${run.specimens} specimens outlived one service life: with ${formatQuantity(target.confidence * 100, '%')} confidence at least ${share(run.specimenSurvival)} of specimens with ${formatNumber(run.jointsEach)} joints, and so ${share(run.boardSurvival)} of boards, do. It asks nothing of the failure rate being constant.`
}
