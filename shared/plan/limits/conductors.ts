import { published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const conductorRiseMax = limit({
  key: 'conductor-rise-most',
  label: 'Rise of a conductor over the board',
  unit: 'K',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'standard',
    from: published('ECSS-Q-ST-70-12C Rev.1, 13.6.2: 10 K, better 5 K, as a tailoring note of it quotes'),
  },
})
