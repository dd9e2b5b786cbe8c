import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** What a lead is made of under its finish. */
export const LEAD_BASES = {
  copper: { label: 'Copper', zinc: false },
  brass: { label: 'Brass (more than 5 % zinc)', zinc: true },
  bronze: { label: 'Phosphor bronze', zinc: false },
  'iron-nickel': { label: 'Iron-nickel (alloy 42, Kovar)', zinc: false },
  steel: { label: 'Copper-clad steel', zinc: false },
} as const

/** What lies between the lead's metal and its coating. */
export const LEAD_BARRIERS = {
  none: { label: 'None' },
  copper: { label: 'Copper' },
  nickel: { label: 'Nickel' },
  'tin-nickel': { label: 'Tin-nickel' },
} as const

/**
 * What tin meets under a coating: it decides by which law compound grows, and what makes whiskers grow.
 * The underlayer where there is one; copper over steel, brass and bronze grow compound as copper does.
 */
export type UnderTin = 'copper' | 'nickel' | 'iron-nickel'
export function underTin({
  base,
  barrier,
}: {
  readonly base: keyof typeof LEAD_BASES
  readonly barrier: keyof typeof LEAD_BARRIERS
}): UnderTin {
  switch (barrier) {
    case 'nickel':
    case 'tin-nickel':
      return 'nickel'
    case 'copper':
      return 'copper'
    case 'none':
      return base === 'iron-nickel' ? 'iron-nickel' : 'copper'
  }
}

export interface LeadCoating {
  readonly label: string
  readonly metal: 'tin' | 'tin-lead' | 'lead-free solder' | 'gold' | 'silver' | 'palladium'
  readonly tinPct: number
  readonly leadPct: number
  readonly bismuthPct: number
  /** Pure tin, or so nearly that whiskers may grow (less than 3 % lead). */
  readonly whiskers: 'bright' | 'matte' | 'no'
  /** Dipped, or plated and then fused: it starts with compound. */
  readonly molten?: true
  /** Judged against the programme's window for tin and tin-lead. */
  readonly tinWindow: boolean
  readonly note?: string
  readonly source: Source
}

/** What the solder meets on a lead. */
export const LEAD_COATINGS = {
  'tin-matte': {
    label: 'Tin, matte plated',
    source: published('ASTM B545: tin coatings by class, 5 µm (B) and 8 µm (C) for solderability'),
    metal: 'tin',
    tinPct: 100,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'matte',
    tinWindow: true,
  },
  'tin-bright': {
    label: 'Tin, bright plated',
    source: fromMemory('ASTM B545; zinc passes through bright tin faster than through matte'),
    metal: 'tin',
    tinPct: 100,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'bright',
    tinWindow: true,
  },
  'tin-lead': {
    label: 'Sn60Pb40, plated and left unfused',
    source: published('MIL-PRF-38535K, Table A-III: tin-lead plate of 3 to 50 % lead, 7.62 µm as plated'),
    metal: 'tin-lead',
    tinPct: 60,
    leadPct: 40,
    bismuthPct: 0,
    whiskers: 'no',
    tinWindow: true,
  },
  'tin-lead-fused': {
    label: 'Sn60Pb40, plated and fused',
    source: fromMemory('MIL-M-38510 and MIL-PRF-38535: tin-lead plate, fused after plating'),
    metal: 'tin-lead',
    tinPct: 60,
    leadPct: 40,
    bismuthPct: 0,
    whiskers: 'no',
    molten: true,
    tinWindow: true,
  },
  'dipped-tin-lead': {
    label: 'Hot-dipped in Sn60 or Sn63',
    source: published('MIL-PRF-38535K, Table A-III: hot dip in Sn60 or Sn63, 1.52 to 5.08 µm by lead'),
    metal: 'tin-lead',
    tinPct: 60,
    leadPct: 40,
    bismuthPct: 0,
    whiskers: 'no',
    molten: true,
    tinWindow: true,
  },
  'dipped-lead-free': {
    label: 'Hot-dipped in lead-free solder',
    source: commonPractice('Leads dipped in the lead-free solder that they will be soldered with'),
    metal: 'lead-free solder',
    tinPct: 96.5,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'no',
    molten: true,
    tinWindow: true,
    note: 'Fused tin alloy: whiskers are rare but not excluded.',
  },
  'tin-bismuth': {
    label: 'Tin-bismuth, plated (2 to 4 % bismuth)',
    source: fromMemory('Tin with 2 to 4 % bismuth, plated, as a whisker measure (JP002)'),
    metal: 'tin',
    tinPct: 97,
    leadPct: 0,
    bismuthPct: 3,
    whiskers: 'no',
    tinWindow: true,
  },
  silver: {
    label: 'Silver',
    source: fromMemory('Dissolution in Sn60Pb40: silver 1.1 µm/s at 232 °C (Bader, Welding J. 1969)'),
    metal: 'silver',
    tinPct: 0,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'no',
    tinWindow: false,
    note: 'Dissolves in tin solder; tarnishes in sulphur.',
  },
  gold: {
    label: 'Gold',
    source: published('MIL-PRF-38535K, Table A-III: gold 1.27 to 5.72 µm over nickel'),
    metal: 'gold',
    tinPct: 0,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'no',
    tinWindow: false,
  },
  'nickel-palladium-gold': {
    label: 'Nickel, palladium and gold flash',
    source: published('MIL-PRF-38535K, Table A-III: palladium 0.51 to 2.13 µm over nickel'),
    metal: 'palladium',
    tinPct: 0,
    leadPct: 0,
    bismuthPct: 0,
    whiskers: 'no',
    tinWindow: false,
  },
} as const satisfies Record<string, LeadCoating>

/** Least lead in a tin finish that keeps whiskers away, % by mass. */
export const LEAD_AGAINST_WHISKERS = {
  minPct: 3,
  source: published('MIL-PRF-28776, 3.31: tin finishes hold at least 3 % lead'),
} as const

/** Measures against whiskers on pure tin. */
export const WHISKER_MEASURES = {
  nickelUnderlayerUm: {
    value: 1.27,
    source: fromMemory('JESD201/JP002: nickel underlayer of 0.5 to 1.27 µm, by edition'),
  },
  matteThicknessUm: {
    value: 8,
    source: fromMemory('JP002: matte tin without barrier at least 7, better 8 to 10 µm'),
  },
  ironNickel: {
    source: fromMemory(
      'JP002: on iron-nickel whiskers grow by the mismatch of expansion with every change of temperature, which neither underlayer nor anneal relieves',
    ),
  },
  anneal: {
    message: '1 h at 150 °C within 24 h of plating',
    source: fromMemory('JP002: matte tin annealed 1 h at 150 °C within 24 h of plating'),
  },
} as const

export const BRASS_BARRIER_SOURCE = commonPractice(
  'At least 3 µm of copper or nickel under tin on brass; ASTM B545 asks 2.5 µm (from memory)',
)
