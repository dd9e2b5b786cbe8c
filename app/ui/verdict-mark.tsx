import type { Verdict } from '@/shared/rules/finding'
import { JointDrawing, VERDICT_INK } from './joint-drawing'

type VerdictMarkProps = {
  verdict: Verdict
  /** Height of the joint in pixels: 20 in a row, 96 at the head of a finding. */
  size?: number
}

/** A verdict as a joint in section, with its word. */
export function VerdictMark({ verdict, size = 20 }: VerdictMarkProps) {
  const set = size >= 40 ? 'mark mark-tall' : size > 24 ? 'mark mark-large' : 'mark'
  return (
    <span className={set}>
      <JointDrawing verdict={verdict} size={size} />
      <span className={`mark-word ${VERDICT_INK[verdict]}`}>{verdict}</span>
    </span>
  )
}
