import type { NetClass } from '@/shared/plan/parameters/net-classes'
import type { SpacingRow } from '@/shared/plan/parameters/spacings'
import type { NetGap } from '../gaps'
import { netLoad, voltageBetween } from '../net-loads'

type Proposed = Partial<SpacingRow>

const INSIDE = 'B1'
const LONGEST_NAME = 80

/**
 * The table of closest spacings as the board's files have it: rows that name two
 * nets take their least gap; for every voltage between nets that stands in no
 * row, the closest pair of it on outer and on inner layers is added.
 */
export function proposedSpacings(
  gaps: readonly NetGap[],
  before: readonly SpacingRow[],
  classes: readonly NetClass[],
): Proposed[] {
  const kept = before.map((row): Proposed => {
    const gapMm = least(gaps.filter((gap) => isInside(gap) === (row.category === INSIDE) && names(row, gap)))
    return gapMm === undefined ? row : { ...row, gapMm }
  })
  return [...kept, ...newVoltages(gaps, before, classes)]
}

function newVoltages(
  gaps: readonly NetGap[],
  before: readonly SpacingRow[],
  classes: readonly NetClass[],
): Proposed[] {
  const closest = new Map<string, NetGap & { peakV: number }>()
  for (const gap of gaps) {
    const [one, other] = gap.nets.map((net) => netLoad(net, classes).voltage)
    if (!one || !other) continue
    const peakV = voltageBetween(one, other)
    const key = `${peakV} ${isInside(gap)}`
    if ((closest.get(key)?.gapMm ?? Infinity) > gap.gapMm) closest.set(key, { ...gap, peakV })
  }
  return [...closest.values()]
    .filter(
      (gap) => !before.some((row) => row.peakV === gap.peakV && (row.category === INSIDE) === isInside(gap)),
    )
    .sort((one, other) => other.peakV - one.peakV)
    .map(({ nets, peakV, gapMm, ...gap }) => ({
      between: nets.join(' to ').slice(0, LONGEST_NAME),
      peakV,
      gapMm: toMicrometre(gapMm),
      ...(isInside(gap) && { category: INSIDE, solderSide: 'away' }),
    }))
}

const isInside = ({ layer }: Pick<NetGap, 'layer'>): boolean => layer.startsWith('inner')
const toMicrometre = (mm: number): number => Math.round(mm * 1000) / 1000
const least = (gaps: readonly NetGap[]): number | undefined =>
  gaps.length > 0 ? toMicrometre(Math.min(...gaps.map(({ gapMm }) => gapMm))) : undefined

const names = ({ between }: SpacingRow, { nets }: NetGap): boolean => {
  const words = new Set(between.toLowerCase().split(/[\s,;:()–—]+/))
  return nets.every((net) => words.has(net.toLowerCase()))
}
