import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** A set laid out earlier: its joints, and how often each person has called it. Never a call. */
export interface SetToCall {
  readonly study: string
  readonly joints: readonly string[]
  readonly roundsOf: ReadonlyMap<string, number>
}

const byName = new Intl.Collator('en', { numeric: true })

export function setsToCall(view: ProgrammeView): SetToCall[] {
  const calls = recordsOfKind(view.state.facts.records, 'inspector-call')
  return [...new Set(calls.map(({ study }) => study))].map((study) => {
    const own = calls.filter((call) => call.study === study)
    const rounds = new Map<string, number>()
    for (const { inspector, round } of own) rounds.set(inspector, Math.max(rounds.get(inspector) ?? 0, round))
    return {
      study,
      joints: [...new Set(own.map(({ joint }) => joint))].sort(byName.compare),
      roundsOf: rounds,
    }
  })
}
