import { findLimit } from '@/shared/catalogue/standard-plan'
import { choiceColumn, flagColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { AUTHORITIES } from '@/shared/plan/requirement'
import { printedUnit } from '@/shared/quantity/unit'

const REST = {
  authority: choiceColumn({
    label: 'From',
    options: AUTHORITIES.map((value) => ({ value, label: value })),
  }),
  document: textColumn({ label: 'Document', maxLength: 160 }),
  clause: optionalColumn(textColumn({ label: 'Clause', maxLength: 80 })),
  value: numberColumn({ label: 'Limit', unit: '1', min: -1e9, max: 1e9 }),
  relaxes: optionalColumn(flagColumn({ label: 'Relaxes lower ones' })),
}

/** A row of limits that an alternative would state, as it is read from a form. */
export const STATED_LIMIT_COLUMNS = { limit: textColumn({ label: 'Limit of' }), ...REST } as const

/** The same as it is filled in, for the limits of some items. */
export const statedLimitColumns = (keys: readonly string[]) => ({
  limit: choiceColumn({
    label: 'Limit of',
    options: keys.flatMap((key) => {
      const limit = findLimit(key)
      if (!limit) return []
      const unit = printedUnit(limit.unit)
      return [{ value: key, label: `${limit.label}, ${limit.direction}${unit && `, ${unit}`}` }]
    }),
  }),
  ...REST,
})
