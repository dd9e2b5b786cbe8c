import { BOARD_FINISHES, GOLD_FLASH_SOURCE, TIN_WINDOW_SOURCE } from '@/shared/materials/board-finishes'
import { BRASS_BARRIER_SOURCE } from '@/shared/materials/lead-finishes'
import { commonPractice, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const tinCoatingMin = limit({
  key: 'tin-coating-least',
  label: 'Tin or tin-lead coating, least',
  unit: 'µm',
  direction: 'at least',
  byDefault: { value: 5, authority: 'common practice', from: TIN_WINDOW_SOURCE },
})

export const tinCoatingMax = limit({
  key: 'tin-coating-most',
  label: 'Tin or tin-lead coating, most',
  unit: 'µm',
  direction: 'at most',
  byDefault: { value: 10, authority: 'common practice', from: TIN_WINDOW_SOURCE },
})

export const brassBarrierMin = limit({
  key: 'brass-barrier-least',
  label: 'Copper or nickel under tin on brass',
  unit: 'µm',
  direction: 'at least',
  byDefault: { value: 3, authority: 'common practice', from: BRASS_BARRIER_SOURCE },
})

export const goldFlashMax = limit({
  key: 'gold-flash-most',
  label: 'Gold flash on a surface to be soldered',
  unit: 'µm',
  direction: 'at most',
  byDefault: { value: 0.25, authority: 'common practice', from: GOLD_FLASH_SOURCE },
})

export const nickelUnderFlashMin = limit({
  key: 'nickel-under-flash-least',
  label: 'Nickel or tin-nickel under a gold flash',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: BOARD_FINISHES.enig.underlayer.minUm,
    authority: 'standard',
    from: BOARD_FINISHES.enig.underlayer.source,
  },
})

export const nickelUnderFlashMax = limit({
  key: 'nickel-under-flash-most',
  label: 'Nickel under a gold flash, greatest least',
  unit: 'µm',
  direction: 'at most',
  byDefault: {
    value: BOARD_FINISHES.enig.underlayer.maxUm,
    authority: 'standard',
    from: BOARD_FINISHES.enig.underlayer.source,
  },
})

const SILVER_COAT = commonPractice(
  'Silver on leads of 3 to 8 µm: thinner is gone in the first second of solder',
)
export const silverCoatMin = limit({
  key: 'silver-coat-least',
  label: 'Silver coat of a lead, least',
  unit: 'µm',
  direction: 'at least',
  byDefault: { value: 3, authority: 'common practice', from: SILVER_COAT },
})
export const silverCoatMax = limit({
  key: 'silver-coat-most',
  label: 'Silver coat of a lead, most',
  unit: 'µm',
  direction: 'at most',
  byDefault: { value: 8, authority: 'common practice', from: SILVER_COAT },
})

const PALLADIUM_COAT = published(
  'MIL-PRF-38535K, Table A-III: palladium, and palladium with a gold flash, 0.51 to 2.13 µm',
)
export const palladiumCoatMin = limit({
  key: 'palladium-coat-least',
  label: 'Palladium coat of a lead, least',
  unit: 'µm',
  direction: 'at least',
  byDefault: { value: 0.51, authority: 'standard', from: PALLADIUM_COAT },
})
export const palladiumCoatMax = limit({
  key: 'palladium-coat-most',
  label: 'Palladium coat of a lead, most',
  unit: 'µm',
  direction: 'at most',
  byDefault: { value: 2.13, authority: 'standard', from: PALLADIUM_COAT },
})

export const goldFractionMax = limit({
  key: 'gold-fraction-most',
  label: 'Gold in a joint, by mass',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 3,
    authority: 'standard',
    from: published('IPC-D-279, 5.4.4: 3 % by mass; other readings 3 to 5 %'),
  },
})

export const lacquerStorageMax = limit({
  key: 'lacquer-storage-most',
  label: 'Storage of lacquered copper',
  unit: 'months',
  direction: 'at most',
  byDefault: {
    value: 3,
    authority: 'common practice',
    from: commonPractice('Lacquer keeps copper solderable for short storage only'),
  },
})

export const freeTinMin = limit({
  key: 'free-tin-least',
  label: 'Solderable coating left at soldering',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 1,
    authority: 'common practice',
    from: commonPractice(
      'About 1 µm (40 microinches) of free tin or solder is where solderability becomes doubtful',
    ),
  },
})
