import { limit, type Limit } from '@/shared/plan/requirement'
import { commonPractice, computed, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/**
 * How far from its melting range an alloy is worked, where it melts elsewhere
 * than its family does (tin-bismuth, half tin half lead): windows in °C made for
 * the family do not suit it.
 */
const ofAlloy = (
  key: string,
  label: string,
  unit: Limit['unit'],
  direction: Limit['direction'],
  value: number,
  from: Source,
): Limit => limit({ key, label, unit, direction, byDefault: { value, authority: 'common practice', from } })

const BATH = computed(
  'Baths of 240 to 260 °C (Sn63Pb37, 183 °C) and of 255 to 270 °C (Sn96.5Ag3Cu0.5, 220 °C) lie 35 to 77 K above the liquidus',
)
export const bathAboveLiquidusMin = ofAlloy(
  'bath-above-liquidus-least',
  'Bath above the liquidus of an alloy that melts unlike its family, at least',
  'K',
  'at least',
  35,
  BATH,
)
export const bathAboveLiquidusMax = ofAlloy(
  'bath-above-liquidus-most',
  'Bath above the liquidus of an alloy that melts unlike its family, at most',
  'K',
  'at most',
  77,
  BATH,
)

const PASTE = published(
  'Reflow of tin-bismuth, liquidus 138 °C: technical data sheet of paste 4902P, version 1.03 (24 August 2020), page 4: peak 160 to 180 °C, 60 to 90 s above liquidus',
)
export const peakAboveLiquidusMin = ofAlloy(
  'peak-above-liquidus-least',
  'Peak of reflow above the liquidus of an alloy that melts unlike its family, at least',
  'K',
  'at least',
  22,
  PASTE,
)
export const peakAboveLiquidusMax = ofAlloy(
  'peak-above-liquidus-most',
  'Peak of reflow above the liquidus of an alloy that melts unlike its family, at most',
  'K',
  'at most',
  42,
  PASTE,
)
export const aboveLiquidusUnlikeMin = ofAlloy(
  'above-liquidus-unlike-least',
  'Shortest time above liquidus, alloy that melts unlike its family',
  's',
  'at least',
  60,
  PASTE,
)
export const aboveLiquidusUnlikeMax = ofAlloy(
  'above-liquidus-unlike-most',
  'Longest time above liquidus, alloy that melts unlike its family',
  's',
  'at most',
  90,
  PASTE,
)

export const preheatBelowSolidusMin = ofAlloy(
  'preheat-below-solidus-least',
  'Preheat below the solidus of the alloy',
  'K',
  'at least',
  20,
  commonPractice('Joints already made stay 20 K or more below the solidus in preheat'),
)

export const tipAboveLiquidusMax = ofAlloy(
  'tip-above-liquidus-most',
  'Tip above the liquidus of an alloy that melts unlike its family',
  'K',
  'at most',
  133,
  computed('A ceiling of 316 °C for Sn63Pb37 lies 133 K above its liquidus; for lead-free it is 165 K'),
)
