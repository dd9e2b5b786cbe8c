import { findingAddress, gateAddress, itemAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { LapsedSignatures } from '@/shared/gate/lapsed-signatures'
import { itemHolding } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import type { AnyRule } from '@/shared/rules/rule'

interface DependentsProps {
  view: ProgrammeView
  rules: readonly AnyRule[]
  reach: LapsedSignatures
}

/** What rests on a value or a limit: the findings that read it, and the signatures that cover it. */
export function Dependents({ view, rules, reach }: DependentsProps) {
  return (
    <>
      {rules.length > 0 ? (
        <RuledTable
          caption="Findings that read it"
          captionHidden
          rows={rules}
          rowKey={({ id }) => id}
          columns={[
            {
              label: 'Finding',
              names: true,
              cell: ({ id, title }) => <a href={findingAddress(view.code, id)}>{title}</a>,
            },
            {
              label: 'Verdict',
              set: 'shrink',
              cell: ({ id }) => (
                <VerdictMark verdict={view.judgement.findings.get(id)?.verdict ?? 'undetermined'} />
              ),
            },
            { label: 'Found', cell: ({ id }) => view.judgement.findings.get(id)?.found ?? '–' },
            { label: 'Item', cell: ({ id }) => <ItemLink code={view.code} rule={id} /> },
          ]}
        />
      ) : (
        <p>No finding reads it; the approvals of its item cover it.</p>
      )}
      <Signatures code={view.code} reach={reach} />
    </>
  )
}

function ItemLink({ code, rule }: { code: string; rule: string }) {
  const item = itemHolding.rule(rule)
  return item ? <a href={itemAddress(code, item.key)}>{item.title}</a> : <>–</>
}

function Signatures({ code, reach: { approvals, gates } }: { code: string; reach: LapsedSignatures }) {
  if (approvals.length === 0 && gates.length === 0)
    return <p>No signature rests on it: a change undoes none.</p>
  const items = [...new Map(approvals.map(({ itemKey, item }) => [itemKey, item]))]
  return (
    <ul className="what-rests" aria-label="Signatures that a change undoes">
      {items.map(([key, item]) => (
        <li key={key}>
          The approval of <a href={itemAddress(code, key)}>{item}</a> by{' '}
          {approvals
            .filter(({ itemKey }) => itemKey === key)
            .map(({ department, personName }) => `${DEPARTMENT_NAMES[department]} (${personName})`)
            .join(', ')}{' '}
          lapses when it changes.
        </li>
      ))}
      {gates.map((stage) => (
        <li key={stage}>
          The <a href={gateAddress(code, stage)}>{STAGE_NAMES[stage].toLowerCase()} gate</a> would have to be
          signed again.
        </li>
      ))}
    </ul>
  )
}
