import type { ReactElement } from 'react'
import type { Verdict } from '@/shared/rules/finding'
import { jointMarkup, VERDICT_INK } from './joint-drawing'
import { onceFor } from './once-for'

type VerdictMarkProps = {
  verdict: Verdict
  /** Height of the joint in pixels: 20 in a row, 96 at the head of a finding. */
  size?: number
}

/** A verdict as a joint in section, with its word. */
export const VerdictMark = ({ verdict, size = ROW }: VerdictMarkProps): ReactElement =>
  size === ROW ? verdictMark(verdict) : marked(verdict, size)

const ROW = 20

/** The mark of a row, for places with hundreds. */
export const verdictMark = onceFor((verdict: Verdict) => marked(verdict, ROW))

function marked(verdict: Verdict, size: number): ReactElement {
  const set = size >= 40 ? 'mark mark-tall' : size > 24 ? 'mark mark-large' : 'mark'
  const __html = `${jointMarkup(verdict, size)}<span class="mark-word ${VERDICT_INK[verdict]}">${verdict}</span>`
  return <span className={set} dangerouslySetInnerHTML={{ __html }} />
}
