import type { TrailEntry } from './entry'

/** Where a trail of the works ended when a gate was signed over facts that rest on it. */
export interface WorksHead {
  readonly trailId: string
  readonly kind: string
  readonly code: string
  readonly seq: number
  readonly hash: string
}

/** The heads that an entry says a gate rests on; none in one that signs no gate, or signed before the works had trails. */
export function worksHeadsIn({ command, payload }: Pick<TrailEntry, 'command' | 'payload'>): WorksHead[] {
  if (command !== 'sign-gate') return []
  const said = JSON.parse(payload) as { readonly worksHeads?: readonly WorksHead[] }
  return [...(said.worksHeads ?? [])]
}
