import { paretoOrder } from '@/shared/statistics/comparison/pareto'
import {
  defectsPerMillionInterval,
  defectsPerMillionJoints,
} from '@/shared/statistics/intervals/defects-per-million'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { defectRecord, type DefectRecord, type ElectricalTest } from './defect-record'
import type { DefectKind, Inspection } from '@/shared/records/inspection'

/** Joints with one kind of defect, per million joints inspected, with exact two-sided bounds. */
export interface KindRate {
  readonly kind: DefectKind | 'kind not said'
  readonly joints: number
  readonly perMillion: number
  readonly interval: Interval
  /** Of all joints counted under a kind; a joint with two faults counts under both. */
  readonly share: number
  readonly cumulativeShare: number
}

/** How many joints have each kind of defect, most frequent first. Empty when nothing was found. */
export function countsByKind(
  record: DefectRecord,
): Pick<KindRate, 'kind' | 'joints' | 'share' | 'cumulativeShare'>[] {
  const counts = new Map<KindRate['kind'], number>()
  const count = (kind: KindRate['kind'], joints: number): void => {
    if (joints > 0) counts.set(kind, (counts.get(kind) ?? 0) + joints)
  }
  for (const { kinds } of record.defectiveJoints) {
    if (kinds.length === 0) count('kind not said', 1)
    for (const kind of kinds) count(kind, 1)
  }
  count('kind not said', record.unnamed)
  return paretoOrder(counts).map(({ kind, amount, share, cumulativeShare }) => ({
    kind: kind as KindRate['kind'],
    joints: amount,
    share,
    cumulativeShare,
  }))
}

/**
 * Rates by kind of defect, most frequent first. Empty when nothing was found.
 * Errors: RangeError when more joints are defective than were seen.
 */
export const ratesByKind = (record: DefectRecord, confidence: number): KindRate[] =>
  countsByKind(record).map((counted) => {
    const seen = { defectiveJoints: counted.joints, jointsSeen: record.jointsSeen }
    return {
      ...counted,
      perMillion: defectsPerMillionJoints(seen),
      interval: defectsPerMillionInterval(seen, confidence),
    }
  })

/** All that a screen tells of the defects found, by kind and in all. */
export interface DefectSummary {
  readonly assembliesSeen: number
  readonly jointsSeen: number
  readonly defectiveJoints: number
  /** Per million joints inspected, with exact two-sided bounds; undefined while no joint was seen. */
  readonly rate: { readonly perMillion: number; readonly interval: Interval } | undefined
  readonly byKind: readonly KindRate[]
}

const USUAL_CONFIDENCE = 0.95

/**
 * The defects of these inspections (and of electrical tests, when given), each
 * joint counted once. No look sees more joints than `jointsOnBoard`. Where
 * more joints are at fault than were seen there is no rate.
 */
export function defectSummary(
  inspections: readonly Inspection[],
  options: {
    readonly tests?: readonly ElectricalTest[]
    readonly jointsOnBoard?: number
    readonly confidence?: number
  } = {},
): DefectSummary {
  const { tests = [], jointsOnBoard, confidence = USUAL_CONFIDENCE } = options
  const record = defectRecord(inspections, tests, jointsOnBoard)
  const { assembliesSeen, jointsSeen, defective } = record
  const counted = { assembliesSeen, jointsSeen, defectiveJoints: defective }
  if (jointsSeen === 0 || defective > jointsSeen) return { ...counted, rate: undefined, byKind: [] }
  const seen = { defectiveJoints: defective, jointsSeen }
  return {
    ...counted,
    rate: {
      perMillion: defectsPerMillionJoints(seen),
      interval: defectsPerMillionInterval(seen, confidence),
    },
    byKind: ratesByKind(record, confidence),
  }
}
