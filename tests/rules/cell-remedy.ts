import type { Facts } from '@/shared/rules/facts'
import type { Finding, Remedy, RemedyCell } from '@/shared/rules/finding'
import { judge, type AnyRule } from '@/shared/rules/rule'

type CellRemedy = Remedy & { readonly cell: RemedyCell }

/** True when a remedy names the one cell of a table that it would set. */
export const isCellRemedy = (remedy: Remedy | undefined): remedy is CellRemedy => remedy?.cell !== undefined

/** The facts with the remedy's cell set. */
export function withCell(facts: Facts, { cell }: CellRemedy): Facts {
  const rows = facts.values.get(cell.parameter) as readonly Record<string, unknown>[]
  const mended = rows.map((row, index) => (index === cell.row ? { ...row, [cell.column]: cell.value } : row))
  return { ...facts, values: new Map(facts.values).set(cell.parameter, mended) }
}

/** The finding after the finding's own remedy has set its cell. Throws when it offers none. */
export function afterCellRemedy(rule: AnyRule, facts: Facts): Finding {
  const { remedy } = judge(rule, facts)
  if (!isCellRemedy(remedy)) throw new Error(`${rule.id} offers no remedy that sets one cell.`)
  return judge(rule, withCell(facts, remedy))
}
