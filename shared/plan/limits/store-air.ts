import { limit } from '@/shared/plan/requirement'
import { fromMemory } from '@/shared/sources/provenance'

export const storeSilverFilmMax = limit({
  key: 'store-silver-film-most',
  label: 'Film on a silver coupon in the store, in 30 days',
  unit: 'nm',
  direction: 'at most',
  byDefault: {
    value: 20,
    authority: 'standard',
    from: fromMemory('ANSI/ISA-71.04-2013, class G1: below 200 Å on silver in 30 days'),
  },
})

export const storeCopperFilmMax = limit({
  key: 'store-copper-film-most',
  label: 'Film on a copper coupon in the store, in 30 days',
  unit: 'nm',
  direction: 'at most',
  byDefault: {
    value: 30,
    authority: 'standard',
    from: fromMemory('ANSI/ISA-71.04-2013, class G1: below 300 Å on copper in 30 days'),
  },
})

export const storeChlorideMax = limit({
  key: 'store-chloride-most',
  label: 'Chlorides deposited in the store',
  unit: 'mg/(m²·d)',
  direction: 'at most',
  byDefault: {
    value: 3,
    authority: 'standard',
    from: fromMemory('ISO 9223, class S0: at most 3 mg of chloride on a square metre a day'),
  },
})
