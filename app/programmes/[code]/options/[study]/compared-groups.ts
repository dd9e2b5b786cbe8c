import type { RowGroup } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { OptionComparison } from '@/shared/gate/option-outcome'
import type { OptionRow } from './columns'
import { findingRow } from './finding-row'
import { signatureRows } from './signature-rows'
import { limitRow } from './limit-row'
import { noteRow, valueRow } from './value-row'

/** The rows of a comparison under their headings; a heading without rows is left out. */
export function comparedGroups(view: ProgrammeView, comparison: OptionComparison): RowGroup<OptionRow>[] {
  const { parameters, rules, outcomes } = comparison
  const of = (effect: 'turns' | 'moves') =>
    rules.filter((row) => row.effect === effect).map((row) => findingRow(view, row))
  const groups: RowGroup<OptionRow>[] = [
    {
      key: 'values',
      heading: 'What differs',
      rows: [
        ...(outcomes.some(({ alternative }) => alternative.note) ? [noteRow] : []),
        ...parameters.map((key) => valueRow(view, key)),
        ...comparison.limits.map((key) => limitRow(view, key)),
      ],
    },
    { key: 'turns', heading: 'Findings that turn', rows: of('turns') },
    { key: 'moves', heading: 'Findings that keep their verdict and say something else', rows: of('moves') },
    { key: 'signatures', heading: 'Approvals that would lapse', rows: signatureRows(comparison) },
  ]
  return groups.filter(({ rows }) => rows.length > 0)
}
