import { readFileSync } from 'node:fs'
import { plannedItems } from '@/lib/programme/planned-items'
import type { ProgrammeState } from '@/shared/gate/programme-state'

/** The demo's programmes whose facts lie in `facts/`, as `npm run renew-demo-facts` wrote them. */
export const DEMO_PROGRAMMES = ['lx-41', 'px-12', 'vp-3'] as const
export type DemoProgramme = (typeof DEMO_PROGRAMMES)[number]

type StoredState = Omit<ProgrammeState, 'items'> & {
  readonly items: Parameters<typeof plannedItems>[0]
}

/** All recorded facts of one programme of the demo, without a database. */
export function demoState(programme: DemoProgramme): ProgrammeState {
  return revivedState(readFileSync(new URL(`facts/${programme}.json`, import.meta.url), 'utf8'))
}

/** A state as `npm run renew-demo-facts` writes it. */
export function revivedState(text: string): ProgrammeState {
  const stored = JSON.parse(text, revivedMap) as StoredState
  return { ...stored, items: plannedItems(stored.items) }
}

const revivedMap = (_: string, value: unknown): unknown =>
  value !== null && typeof value === 'object' && 'pairs' in value
    ? new Map(value.pairs as [unknown, unknown][])
    : value
