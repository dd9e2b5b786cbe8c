import { limitAddress } from '@/app/addresses'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { governingRequirement, type Limit } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { OptionRow } from './columns'

/** One limit that some alternative states: what rules today, and what each alternative would state. */
export function limitRow(view: ProgrammeView, key: string): OptionRow {
  const limit = findLimit(key)
  const rules = limit && governingRequirement(limit, view.state.facts.requirements)
  const today = limit && rules && `${bound(limit, rules.value)}, by ${rules.document}`
  return {
    key: `limit ${key}`,
    head: <a href={limitAddress(view.code, key)}>{limit?.label ?? key}, limit</a>,
    today,
    cell: ({ alternative }) => {
      const stated = alternative.limits.filter((one) => one.limit === key)
      if (stated.length === 0 || !limit) return today
      return (
        <ul className="option-differences">
          {stated.map(({ value, document, authority, relaxes }) => (
            <li key={`${document} ${value}`}>
              <strong>{bound(limit, value)}</strong>, by {document} ({authority}
              {relaxes && ', relaxes'})
            </li>
          ))}
        </ul>
      )
    },
  }
}

const bound = ({ direction, unit }: Limit, value: number): string =>
  `${direction} ${formatQuantity(value, unit, 6)}`
