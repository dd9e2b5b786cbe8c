import type { ConductorRow } from '@/shared/plan/parameters/conductors'
import type { NetClass } from '@/shared/plan/parameters/net-classes'
import type { Part } from '@/shared/rules/finding'
import { namesNet, netLoad, type NetLoad } from '../net-loads'

/** What is stated of nets: in the table of nets, and of those whose conductors are listed. */
export interface StatedLoads {
  readonly classes: readonly NetClass[]
  loadOf(net: string): NetLoad
}

export function statedLoads(
  classes: readonly NetClass[] = [],
  conductors: readonly ConductorRow[] = [],
): StatedLoads {
  const listed = conductors.map(({ net, currentA, dropMostMv }): NetClass => ({
    nets: net,
    voltageV: undefined,
    alternates: undefined,
    currentA,
    dropMostMv,
  }))
  const all = [...classes, ...listed]
  return { classes: all, loadOf: (net) => netLoad(net, all) }
}

/** Rows that name no net of the files: what they state is held against nothing. */
export const namingNothing = (rows: readonly NetClass[], nets: readonly string[]): Part[] =>
  rows
    .filter((row) => !nets.some((net) => namesNet(row.nets, net)))
    .map(({ nets: names }) => ({
      subject: names,
      about: { nets: names },
      verdict: 'undetermined',
      found: 'no net of the files is called so',
    }))
