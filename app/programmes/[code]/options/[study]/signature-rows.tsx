import type { OptionComparison } from '@/shared/gate/option-outcome'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'
import type { OptionRow } from './columns'

/** Approvals and gates that adopting would undo, or bring back; no rows where nothing is signed. */
export function signatureRows({ outcomes }: OptionComparison): OptionRow[] {
  const some = (has: (preview: (typeof outcomes)[number]['preview']) => number): boolean =>
    outcomes.some(({ preview }) => has(preview) > 0)
  return [
    ...(some(({ approvals }) => approvals.length)
      ? [
          {
            key: 'approvals',
            head: 'Approvals that lapse',
            today: 'none',
            cell: ({ preview }) => <ByItem entries={preview.approvals} />,
          } satisfies OptionRow,
        ]
      : []),
    ...(some(({ gates }) => gates.length)
      ? [
          {
            key: 'gates',
            head: 'Gates to be signed again',
            today: 'none',
            cell: ({ preview }) => preview.gates.map((stage) => STAGE_NAMES[stage]).join(', ') || 'none',
          } satisfies OptionRow,
        ]
      : []),
    ...(some(({ revived }) => revived.length)
      ? [
          {
            key: 'revived',
            head: 'Approvals that hold again',
            today: 'none',
            cell: ({ preview }) => <ByItem entries={preview.revived} />,
          } satisfies OptionRow,
        ]
      : []),
  ]
}

function ByItem({ entries }: { entries: readonly { item: string; department: Department }[] }) {
  if (entries.length === 0) return <>none</>
  const items = [...new Set(entries.map(({ item }) => item))]
  return (
    <ul className="option-differences">
      {items.map((item) => (
        <li key={item}>
          {item}:{' '}
          {entries
            .filter((entry) => entry.item === item)
            .map(({ department }) => DEPARTMENT_NAMES[department].toLowerCase())
            .join(', ')}
        </li>
      ))}
    </ul>
  )
}
