import { actionAddress, concessionAddress, findingAddress, gateAddress, itemAddress } from '@/app/addresses'
import type { Blocker, GateState } from '@/shared/gate/gate'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { stageBefore } from '@/shared/plan/stage'

/** One line of what is outstanding, and where it is mended. */
export interface BlockerLine {
  readonly kind: string
  readonly message: string
  readonly href: string
}

/**
 * The blockers of each item together, in the order of the route card; the
 * approvals that are merely awaited in one line behind what has to be done first.
 */
export function blockersInWords(code: string, gate: GateState, items: readonly ItemState[]) {
  const keys = [...new Set(gate.blockers.map(({ itemKey }) => itemKey))]
  return keys.map((key) => {
    const blockers = gate.blockers.filter(({ itemKey }) => itemKey === key)
    const awaited = awaitedBy(items.find(({ item }) => item.definition.key === key))
    const lines = blockers
      .filter(({ openPoint }) => openPoint?.kind !== 'approval' || !awaited.includes(openPoint.target))
      .map((blocker) => ({
        kind: blocker.openPoint?.kind ?? 'gate',
        message: blocker.message,
        href: placeOf(code, gate, blocker),
      }))
    return {
      key: key ?? 'gate',
      heading: blockers[0]?.title,
      rows: awaited.length > 0 && key ? [...lines, awaitedLine(code, key, awaited)] : lines,
    }
  })
}

/** Departments that have never approved the item; where an approval lapsed, its own sentence says so. */
const awaitedBy = (item: ItemState | undefined): string[] =>
  (item?.approvals ?? []).filter(({ approval }) => !approval).map(({ department }) => department)

function awaitedLine(code: string, item: string, departments: readonly string[]): BlockerLine {
  const names = departments.map((department) => DEPARTMENT_NAMES[department as keyof typeof DEPARTMENT_NAMES])
  const all = new Intl.ListFormat('en-GB').format(names)
  return {
    kind: 'approval',
    message: `Waits for the approval of ${all}.`,
    href: `${itemAddress(code, item)}#approvals`,
  }
}

function placeOf(code: string, gate: GateState, { itemKey, openPoint }: Blocker): string {
  if (!itemKey || !openPoint) return gateAddress(code, stageBefore(gate.stage) ?? gate.stage)
  const { kind, target } = openPoint
  if (kind === 'finding') return findingAddress(code, target)
  if (kind === 'action') return actionAddress(code, target)
  if (kind === 'concession') return concessionAddress(code, target)
  const part = { value: target, approval: 'approvals', evidence: 'evidence' }[kind]
  return `${itemAddress(code, itemKey)}${part ? `#${part}` : ''}`
}
