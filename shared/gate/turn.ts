import { WANTS_REMEDY, type Finding, type Verdict } from '@/shared/rules/finding'

/** A finding before and after a change, told in words. */
export interface Turn {
  readonly rule: string
  readonly title: string
  readonly before: Verdict
  readonly after: Verdict
  readonly found: string
  readonly remedy?: string
}

/** One finding's change, as it is told. */
export const turn = (title: string, was: Finding, is: Finding): Turn => ({
  rule: is.rule,
  title,
  before: was.verdict,
  after: is.verdict,
  found: is.found,
  ...(is.remedy && WANTS_REMEDY[is.verdict] ? { remedy: is.remedy.message } : {}),
})
