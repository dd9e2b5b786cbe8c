import { GATE_STANDINGS } from '@/shared/gate/gate'
import type { Judgement } from '@/shared/gate/judgement'

/** Where a programme stands, in a few words. */
export function statusOf({ gates, inService }: Judgement): string {
  const shut = gates.filter(({ status }) => !GATE_STANDINGS[status].isOpen)
  const lost = shut.filter(({ status }) => GATE_STANDINGS[status].wasOpen).length
  if (lost > 0) return `${lost === 1 ? 'A gate' : `${lost} gates`} to be signed again`
  if (inService) return 'In service'
  return shut[0] ? `In ${shut[0].stage}` : ''
}
