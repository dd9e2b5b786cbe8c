import type { Verdict } from '@/shared/rules/finding'
import { VERDICT_INK } from './joint-drawing'

/** The number of a check in its circle, as a drawing's item references are balloons (ISO 6433). Its verdict is said beside it. */
export const Balloon = ({ number, verdict }: { number: number; verdict: Verdict }) => (
  <span className={`balloon ${VERDICT_INK[verdict]}`}>{number}</span>
)
