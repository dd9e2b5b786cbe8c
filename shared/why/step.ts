import type { Place } from '@/shared/place'
import type { Verdict } from '@/shared/rules/finding'

/** What somebody may ask of: why is it so? Approvals and gate signatures go by their id. */
export const WHY_KINDS = ['finding', 'value', 'limit', 'approval', 'gate'] as const
export type WhyKind = (typeof WHY_KINDS)[number]
export interface WhyAbout {
  readonly kind: WhyKind
  readonly key: string
}

/** Where a step stands in the trail: an entry of that instant whose record names this. */
export interface RecordedAs {
  /** RFC 3339 */
  readonly at: string
  /** The id or key that the entry holds. */
  readonly name: string
}

/** One link of a chain of reasons: what is so, who made it so, and what that rests on in turn. */
export interface WhyStep {
  readonly what: string
  /** What it comes to: a value with its unit, a formula, what was decided. */
  readonly says?: string
  readonly verdict?: Verdict
  /** Facts beside it, a line each. */
  readonly lines?: readonly string[]
  readonly by?: { readonly name: string; readonly at: string }
  /** The reason, in the words of whoever gave it. */
  readonly words?: string
  readonly place?: Place
  /** A file or link behind it. */
  readonly file?: { readonly evidence: string; readonly url: string | null; readonly name: string }
  /** A chain of its own. */
  readonly why?: WhyAbout
  readonly recorded?: RecordedAs
  readonly rests?: readonly WhyStep[]
}

/** Every entry of the trail that a chain wants to name. */
export const recordedIn = (steps: readonly WhyStep[]): RecordedAs[] =>
  steps.flatMap(({ recorded, rests = [] }) => [...(recorded ? [recorded] : []), ...recordedIn(rests)])

/** One entry wanted, as a key. */
export const recordedKey = ({ at, name }: RecordedAs): string => `${at} ${name}`
