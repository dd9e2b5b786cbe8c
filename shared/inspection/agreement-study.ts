import { cohenKappa, type CohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import { callCounts, crossTable } from '@/shared/statistics/agreement/cross-table'
import { fleissKappa, type FleissKappa } from '@/shared/statistics/agreement/fleiss-kappa'
import type { RecordOf } from '@/shared/records/record-kinds'
import { groupedBy } from '@/shared/grouped-by'

export type InspectorCall = RecordOf<'inspector-call'>
type CallMade = InspectorCall['call']

/** A call for the count: whether it was taken for a defect, of whatever kind. */
export const SORTED = ['sound', 'defective'] as const
export type Sorted = (typeof SORTED)[number]
export const sorted = (call: CallMade): Sorted => (call === 'sound' ? 'sound' : 'defective')

/** Two lists of calls on the same joints, held against each other. */
export interface PairAgreement {
  readonly one: string
  readonly other: string
  /** Joints called by both. */
  readonly joints: number
  /** Rows of `one`, columns of `other`, in the order of `SORTED`. */
  readonly table: readonly (readonly number[])[]
  /** Absent while no joint was called by both. */
  readonly kappa: CohenKappa | undefined
  /** The calls as they were made: kinds used by either, and their cross table. */
  readonly kinds: readonly CallMade[]
  readonly kindTable: readonly (readonly number[])[]
}

/** A joint not called alike by all, or not as it is known to be. */
export interface DisputedJoint {
  readonly joint: string
  readonly calls: readonly { readonly inspector: string; readonly call: CallMade }[]
  readonly known: CallMade | undefined
}

/** One blind set with all that its calls show. */
export interface AgreementStudy {
  readonly study: string
  readonly joints: readonly string[]
  readonly inspectors: readonly string[]
  /** Every two inspectors, first rounds. */
  readonly pairs: readonly PairAgreement[]
  /** Each inspector with what is known; empty where nothing is. */
  readonly withKnown: readonly PairAgreement[]
  /** Each inspector’s first round with the second. */
  readonly withSelf: readonly PairAgreement[]
  /** All together, sorted into sound and defective, on the joints that all of them called. */
  readonly together: FleissKappa | undefined
  /** The same by kind of call. */
  readonly byKind: readonly { readonly call: CallMade; readonly kappa: number | undefined }[]
  readonly disputed: readonly DisputedJoint[]
}

export const KNOWN = 'what is known'

type Calls = ReadonlyMap<string, CallMade>
interface Caller {
  readonly name: string
  readonly rounds: ReadonlyMap<number, Calls>
}

/** The studies in the order they were begun. A joint called twice in one round counts as called last. */
export function agreementStudies(calls: readonly InspectorCall[], confidence: number): AgreementStudy[] {
  return [...groupedBy(calls, ({ study }) => study)].map(([study, own]) => studyOf(study, own, confidence))
}

function studyOf(study: string, calls: readonly InspectorCall[], confidence: number): AgreementStudy {
  const known: Calls = new Map(
    calls.flatMap(({ joint, reference }) => (reference === undefined ? [] : [[joint, reference] as const])),
  )
  const callers = [...groupedBy(calls, ({ inspector }) => inspector)].map(([name, own]) =>
    callerOf(name, own),
  )
  const first = callers.flatMap(({ name, rounds }) => {
    const round = rounds.get(1)
    return round ? [{ name, calls: round }] : []
  })
  const joints = [...new Set(calls.map(({ joint }) => joint))]
  const byAll = joints.filter((joint) => first.every((caller) => caller.calls.has(joint)))
  const table = byAll.map((joint) => first.map((caller) => caller.calls.get(joint)!))
  const several = first.length > 1 && byAll.length > 0
  const used = [...new Set(table.flat())]
  const kinds = several && used.length > 1 ? fleissKappa(callCounts(table, used)).kappaByCategory : []
  return {
    study,
    joints,
    inspectors: callers.map(({ name }) => name),
    pairs: first.flatMap((one, at) =>
      first
        .slice(at + 1)
        .map((other) => pairOf([one.name, one.calls], [other.name, other.calls], confidence)),
    ),
    withKnown:
      known.size === 0 ? [] : first.map((one) => pairOf([one.name, one.calls], [KNOWN, known], confidence)),
    withSelf: callers.flatMap(({ name, rounds }) => {
      const [one, two] = [rounds.get(1), rounds.get(2)]
      return one && two ? [pairOf([name, one], [`${name}, second round`, two], confidence)] : []
    }),
    together: several
      ? fleissKappa(
          callCounts(
            table.map((row) => row.map(sorted)),
            SORTED,
          ),
          confidence,
        )
      : undefined,
    byKind: kinds.map((kappa, at) => ({ call: used[at]!, kappa })),
    disputed: disputedOf(joints, first, known),
  }
}

function callerOf(name: string, calls: readonly InspectorCall[]): Caller {
  const rounds = [...groupedBy(calls, ({ round }) => round)].map(
    ([round, own]) => [round, new Map(own.map(({ joint, call }) => [joint, call] as const))] as const,
  )
  return { name, rounds: new Map(rounds) }
}

function pairOf(
  [one, its]: [string, Calls],
  [other, theirs]: [string, Calls],
  confidence: number,
): PairAgreement {
  const joints = [...its.keys()].filter((joint) => theirs.has(joint))
  const [mine, yours] = [its, theirs].map((calls) => joints.map((joint) => calls.get(joint)!)) as [
    CallMade[],
    CallMade[],
  ]
  const table = crossTable(mine.map(sorted), yours.map(sorted), SORTED)
  const kinds = [...new Set([...mine, ...yours])]
  return {
    one,
    other,
    joints: joints.length,
    table,
    kappa: joints.length === 0 ? undefined : cohenKappa(table, confidence),
    kinds,
    kindTable: crossTable(mine, yours, kinds),
  }
}

function disputedOf(
  joints: readonly string[],
  callers: readonly { readonly name: string; readonly calls: Calls }[],
  known: Calls,
): DisputedJoint[] {
  return joints.flatMap((joint) => {
    const calls = callers.flatMap(({ name, calls: own }) => {
      const call = own.get(joint)
      return call === undefined ? [] : [{ inspector: name, call }]
    })
    const said = new Set([...calls.map(({ call }) => call), ...(known.has(joint) ? [known.get(joint)!] : [])])
    return said.size > 1 ? [{ joint, calls, known: known.get(joint) }] : []
  })
}
