import { database } from '@/lib/db/client'
import { isSingular, WORKS_KINDS, type WorksKind, type WorksSubject } from '@/shared/works/works-kind'

/** Something of the works with where its trail ends. */
export interface WorksTrail extends WorksSubject {
  readonly id: string
  readonly head: { readonly seq: number; readonly hash: string }
}

/** The trail of something of the works, as an address names it; undefined when there is none. */
export async function readWorksTrail(kind: string, code: string): Promise<WorksTrail | undefined> {
  const known = WORKS_KINDS.find((one) => one === kind)
  if (!known) return undefined
  const subject = await database().trailSubject.findUnique({
    where: { kind_code: { kind: known, code: codeOf(known, code) } },
  })
  if (!subject) return undefined
  const trail = await database().trail.findUnique({ where: { id: subject.id } })
  return {
    id: subject.id,
    kind: known,
    code: subject.code,
    head: { seq: trail?.seq ?? 0, hash: trail?.headHash ?? '' },
  }
}

const codeOf = (kind: WorksKind, code: string): string => (isSingular(kind) ? kind : code)
