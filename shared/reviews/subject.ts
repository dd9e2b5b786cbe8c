import { z } from 'zod'

/** What a line of minutes, a comment or a nonconformity can be about. */
export const SUBJECT_KINDS = [
  'item',
  'finding',
  'parameter',
  'action',
  'set-aside',
  'concession',
  'study',
  'lot',
  'log',
  'joint',
  'record',
  'comment',
  'nonconformity',
  'point',
] as const
export type SubjectKind = (typeof SUBJECT_KINDS)[number]

/** Something of a programme, by its kind and what it is known by there. A point is a line of the same minutes. */
export interface Subject {
  readonly kind: SubjectKind
  readonly key: string
}

/** A subject as an entry records it, with its name where no catalogue holds it. */
export const subjectRecord = z.object({
  kind: z.enum(SUBJECT_KINDS),
  key: z.string(),
  name: z.string().optional(),
})

export const sameSubject = (a: Subject | null, b: Subject | null): boolean =>
  a?.kind === b?.kind && a?.key === b?.key

/** One joint of one assembly as a key, whatever their names contain. */
export const jointKey = (assembly: string, joint: string): string =>
  `${encodeURIComponent(assembly.trim())}/${encodeURIComponent(joint.trim())}`

/** The assembly and the joint of such a key; undefined where it is none. */
export function jointOfKey(key: string): { assembly: string; joint: string } | undefined {
  const [assembly, joint, ...more] = key.split('/')
  if (!assembly || !joint || more.length > 0) return undefined
  try {
    return { assembly: decodeURIComponent(assembly), joint: decodeURIComponent(joint) }
  } catch {
    return undefined
  }
}

/** A subject as one word of a form or an address, "kind:key", and back. */
export const subjectText = ({ kind, key }: Subject): string => `${kind}:${key}`

export function subjectFromText(text: string): Subject | undefined {
  const [kind, key = ''] = text.split(/:(.*)/s)
  const known = SUBJECT_KINDS.find((one) => one === kind)
  return known && key ? { kind: known, key } : undefined
}
