import type { Judgement } from '@/shared/gate/judgement'

/** Where a programme stands, in a few words. */
export function statusOf({ gates, inService }: Judgement): string {
  const lost = gates.filter(({ standing }) => standing === 'no longer standing').length
  if (lost > 0) return `${lost === 1 ? 'A gate' : `${lost} gates`} to be signed again`
  if (inService) return 'In service'
  const next = gates.find(({ standing }) => standing !== 'open')
  return next ? `In ${next.stage}` : ''
}
