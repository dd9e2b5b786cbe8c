/**
 * What the works keep once for all programmes, each with a trail of its own. People and company rules are one
 * each; of the others there are many, told apart by their code.
 */
export const WORKS_KINDS = ['line', 'machine', 'supplier', 'part', 'people', 'company-rules'] as const
export type WorksKind = (typeof WORKS_KINDS)[number]

/** What a trail is about. */
export const TRAIL_KINDS = ['programme', 'installation', ...WORKS_KINDS] as const
export type TrailKind = (typeof TRAIL_KINDS)[number]

/** As a title says it, before the code where there are many. */
export const WORKS_KIND_NAMES: Readonly<Record<WorksKind, string>> = {
  line: 'Line',
  machine: 'Machine',
  supplier: 'Supplier',
  part: 'Part',
  people: 'People of the works',
  'company-rules': 'Company rules',
}

/** The kinds of which there is one only; its code is its kind. */
export const isSingular = (kind: WorksKind): boolean => kind === 'people' || kind === 'company-rules'

/** One of them: its kind and its code. */
export interface WorksSubject {
  readonly kind: WorksKind
  readonly code: string
}

/** The same of a kind as it was recorded, which this version may not know; within a sentence. */
export function subjectInWords({ kind, code }: { readonly kind: string; readonly code: string }): string {
  const known = WORKS_KINDS.find((one) => one === kind)
  if (known === undefined) return `${kind} ${code}`
  const name = WORKS_KIND_NAMES[known].toLowerCase()
  return isSingular(known) ? `the ${name}` : `${name} ${code}`
}

/** "Machine WAVE-1", "People of the works". */
export const worksSubjectName = ({ kind, code }: WorksSubject): string =>
  isSingular(kind) ? WORKS_KIND_NAMES[kind] : `${WORKS_KIND_NAMES[kind]} ${code}`
