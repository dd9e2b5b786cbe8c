import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

export interface BoardFinish {
  readonly label: string
  /** What meets the solder. */
  readonly coating: 'tin' | 'tin-lead' | 'lead-free solder' | 'gold' | 'silver' | 'organic' | 'none'
  /** Mass share of tin in the coating, %. */
  readonly tinPct: number
  readonly leadPct: number
  /** The finish's own thickness window, µm, where it is not the programme's window for tin and tin-lead. */
  readonly window?: { readonly minUm: number; readonly maxUm?: number; readonly source: Source }
  /** Metal that must lie under the coating, and how thick, by the finish's own standard. */
  readonly underlayer?: {
    readonly metal: 'nickel'
    readonly minUm: number
    readonly maxUm?: number
    readonly source: Source
  }
  /** Months in a sealed pack until solderability is doubtful: the spread of the sources. */
  readonly shelfMonths?: { readonly min: number; readonly max: number; readonly source: Source }
  /** Made by dipping into solder: one solder exposure of the laminate. */
  readonly hotDipped: boolean
  /** Plated and then molten: it starts with compound, as a dipped coating does. */
  readonly fused?: true
  /** Pure tin over copper may grow whiskers. */
  readonly pureTin: boolean
  readonly note?: string
  /** Of the finish as a whole. */
  readonly source: Source
}

const SHELF = commonPractice(
  'Shelf life in a sealed pack; what fabricators promise differs by two to one or more',
)

const LEVELLED = published(
  'Hot-air levelling as ordered, 2.5 to 12.7 µm, and as made, 1 to 40 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
)

/** Finishes of the board's copper where solder shall go. */
export const BOARD_FINISHES = {
  'tin-lead-plated': {
    label: 'Sn60Pb40, plated and left unfused',
    source: commonPractice('Sn60Pb40 plated over the copper of 5 to 10 µm'),
    coating: 'tin-lead',
    tinPct: 60,
    leadPct: 40,
    hotDipped: false,
    pureTin: false,
    note: 'The knee of the hole is thinnest: about 1 µm may be left there.',
  },
  'tin-lead-fused': {
    label: 'Sn60Pb40, plated and fused',
    source: commonPractice(
      'Sn60Pb40 plated over the copper of 5 to 10 µm and fused in hot oil, vapour or infra-red, where it is to be stored and handled',
    ),
    coating: 'tin-lead',
    tinPct: 60,
    leadPct: 40,
    hotDipped: false,
    fused: true,
    pureTin: false,
    note: 'Fusing shows by dewetting what does not take solder, closes pores, and draws the coating thin at the knee of the hole; it is a heat exposure of the laminate, to be listed as one.',
  },
  'tin-plated': {
    label: 'Tin, plated',
    source: published('ASTM B545: tin coatings by class, 5 µm (B) and 8 µm (C) for solderability'),
    coating: 'tin',
    tinPct: 100,
    leadPct: 0,
    hotDipped: false,
    pureTin: true,
  },
  'hot-air-tin-lead': {
    label: 'Tin-lead, hot-air levelled',
    source: LEVELLED,
    coating: 'tin-lead',
    tinPct: 63,
    leadPct: 37,
    window: {
      minUm: 2.5,
      maxUm: 25,
      source: LEVELLED,
    },
    shelfMonths: { min: 12, max: 12, source: SHELF },
    hotDipped: true,
    pureTin: false,
  },
  'hot-air-lead-free': {
    label: 'Lead-free solder, hot-air levelled',
    source: LEVELLED,
    coating: 'lead-free solder',
    tinPct: 99,
    leadPct: 0,
    window: {
      minUm: 2.5,
      maxUm: 25,
      source: LEVELLED,
    },
    shelfMonths: { min: 6, max: 12, source: SHELF },
    hotDipped: true,
    pureTin: false,
  },
  'immersion-tin': {
    label: 'Immersion tin',
    source: published(
      'IPC-4554: 1.0 µm at −4 standard deviations (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
    coating: 'tin',
    tinPct: 100,
    leadPct: 0,
    window: {
      minUm: 1,
      source: published(
        'IPC-4554: 1.0 µm at −4 standard deviations (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    shelfMonths: { min: 3, max: 12, source: SHELF },
    hotDipped: false,
    pureTin: true,
  },
  'immersion-silver': {
    label: 'Immersion silver',
    source: published(
      'IPC-4553A: 0.12 to 0.4 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
    coating: 'silver',
    tinPct: 0,
    leadPct: 0,
    window: {
      minUm: 0.12,
      maxUm: 0.4,
      source: published(
        'IPC-4553A: 0.12 to 0.4 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    shelfMonths: { min: 3, max: 12, source: SHELF },
    hotDipped: false,
    pureTin: false,
    note: 'Sulphur tarnishes it: needs a sulphur-free pack.',
  },
  enig: {
    label: 'Electroless nickel, immersion gold',
    source: published(
      'IPC-4552 (2002): gold 0.05 µm and more over nickel of 3 to 6 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
    coating: 'gold',
    tinPct: 0,
    leadPct: 0,
    window: {
      minUm: 0.05,
      maxUm: 0.125,
      source: published(
        'IPC-4552 (2002): 0.05 µm and more, 0.075 to 0.125 typical (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    underlayer: {
      metal: 'nickel',
      minUm: 3,
      maxUm: 6,
      source: published(
        'IPC-4552 (2002), Table 3-1: nickel 3 to 6 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    shelfMonths: { min: 6, max: 12, source: SHELF },
    hotDipped: false,
    pureTin: false,
    note: 'Thicker gold means longer attack of the bath on the nickel (black pad).',
  },
  'electrolytic-gold': {
    label: 'Electrolytic gold over nickel',
    source: published(
      'MIL-STD-275: gold over low-stress nickel of 0.0002 in on contacts (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
    coating: 'gold',
    tinPct: 0,
    leadPct: 0,
    underlayer: {
      metal: 'nickel',
      minUm: 5.1,
      source: published(
        'MIL-STD-275: low-stress nickel of 0.0002 in (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    hotDipped: false,
    pureTin: false,
    note: 'A contact finish, not a surface to solder.',
  },
  osp: {
    label: 'Organic solderability preservative on copper',
    source: published(
      'Organic preservative 0.2 to 0.5 µm typical (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
    ),
    coating: 'organic',
    tinPct: 0,
    leadPct: 0,
    window: {
      minUm: 0.2,
      maxUm: 1,
      source: published(
        'Organic preservative 0.2 to 0.5 µm typical, up to 1.0 µm (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
      ),
    },
    shelfMonths: { min: 3, max: 12, source: SHELF },
    hotDipped: false,
    pureTin: false,
  },
  lacquer: {
    label: 'Rosin lacquer on clean copper',
    source: commonPractice('Lacquer keeps copper solderable for short storage only'),
    coating: 'organic',
    tinPct: 0,
    leadPct: 0,
    hotDipped: false,
    pureTin: false,
    note: 'For short storage only.',
  },
  'bare-copper': {
    label: 'Bare copper',
    source: commonPractice('Bare copper tarnishes within days'),
    coating: 'none',
    tinPct: 0,
    leadPct: 0,
    hotDipped: false,
    pureTin: false,
    note: 'Tarnishes within days: nothing protects its solderability.',
  },
} as const satisfies Record<string, BoardFinish>
export type BoardFinishKey = keyof typeof BOARD_FINISHES

/** Where the window of 5 to 10 µm for tin and tin-lead comes from. */
export const TIN_WINDOW_SOURCE = commonPractice(
  'Tin or Sn60Pb40 of 5 to 10 µm for solderability; in line with ASTM B545 classes B and C',
)
export const GOLD_FLASH_SOURCE = fromMemory('A gold flash: up to 0.25 µm (10 microinches)')
