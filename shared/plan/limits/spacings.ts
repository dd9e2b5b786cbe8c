import { commonPractice, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const bridgingGapMin = limit({
  key: 'bridging-gap-least',
  label: 'Gap between bare copper that meets the solder',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.5,
    authority: 'standard',
    from: published(
      'MIL-PRF-55110G, A.3.5.7.1b: 0.020 in between exposed parallel conductors; Wilson, The Circuit Designer’s Companion (2011), p. 61: 0.5 mm without resist',
    ),
  },
})

export const bridgingRunMax = limit({
  key: 'bridging-run-most',
  label: 'Bare side-by-side run across the travel',
  unit: 'mm',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'common practice',
    from: commonPractice(
      'Long parallel runs lie along the travel of the board; how long a run across may be, nobody states',
    ),
  },
})

export const copperToEdgeMin = limit({
  key: 'copper-to-edge-least',
  label: 'Copper to board edge',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.5,
    authority: 'common practice',
    from: published(
      'Wilson, The Circuit Designer’s Companion (2011), p. 68: 0.5 mm; ECSS-Q-ST-70-12C, Table 14-1, asks 0.7 mm of space boards, as a tailoring note of it quotes',
    ),
  },
})

export const partsToEdgeMin = limit({
  key: 'parts-to-edge-least',
  label: 'Components to carried edge',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 3,
    authority: 'common practice',
    from: published(
      'Coombs & Holden, Printed Circuits Handbook, 7th ed. (2016): 3 mm for the conveyor; ECSS-Q-ST-70-12C, 14.3.2c, asks 5 mm of space boards, as a tailoring note of it quotes',
    ),
  },
})
