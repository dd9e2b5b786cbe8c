import { Quantity } from '@/app/ui/quantity'
import { findLimit } from '@/shared/catalogue/standard-plan'
import type { CompanyRule } from '@/shared/company-rules/company-rule'

/** "at most 0.25 mm, relaxes" */
export function RuleValue({ rule: { limit: key, value, relaxes } }: { rule: CompanyRule }) {
  const limit = findLimit(key)
  return (
    <>
      {limit ? (
        <>
          {limit.direction} <Quantity value={value} unit={limit.unit} figures={6} />
        </>
      ) : (
        value
      )}
      {relaxes && ', relaxes'}
    </>
  )
}

export const limitLabel = (key: string): string => findLimit(key)?.label ?? key
