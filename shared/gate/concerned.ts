import { foldedList } from '@/shared/quantity/folded-names'
import { PASSES, VERDICTS, type Finding } from '@/shared/rules/finding'

/**
 * Every part of a finding that keeps it from passing, by verdict, the worst
 * first: "fails: R1–R40, U3; undetermined: J1". Empty where a single part does,
 * which the finding itself names.
 */
export function concernedInWords({ parts = [] }: Pick<Finding, 'parts'>): string {
  const open = parts.filter(({ verdict }) => !PASSES[verdict])
  if (open.length < 2) return ''
  return VERDICTS.toReversed()
    .map((verdict) => ({ verdict, subjects: open.filter((part) => part.verdict === verdict) }))
    .filter(({ subjects }) => subjects.length > 0)
    .map(({ verdict, subjects }) => `${verdict}: ${foldedList(subjects.map(({ subject }) => subject))}`)
    .join('; ')
}
