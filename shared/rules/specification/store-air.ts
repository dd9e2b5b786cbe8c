import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { storeChlorideMax, storeCopperFilmMax, storeSilverFilmMax } from '@/shared/plan/limits/store-air'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { storeChloride, storeCopperFilm, storeSilverFilm } from '@/shared/plan/parameters/storage'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatAgainst } from '@/shared/quantity/format'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import type { Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'

/** Finishes that leave silver or copper open to the air. */
const OPEN_METALS: readonly BoardFinish['coating'][] = ['silver', 'organic', 'none']

export const storeAir = rule({
  id: 'store-air',
  title: 'Sulphur and chlorides in the store',
  why: 'Dry air can spoil a surface too: sulphur tarnishes silver and copper in weeks, chlorides corrode through pores, and neither shows on a hygrometer.',
  formula: 'film on silver and on copper in 30 days, and chloride deposited, each ≤ most',
  stage: 'specification',
  version: 1,
  reads: {
    finish: boardFinish,
    finishes: leadFinishes,
    silver: optional(storeSilverFilm),
    copper: optional(storeCopperFilm),
    chloride: optional(storeChloride),
    silverMax: storeSilverFilmMax,
    copperMax: storeCopperFilmMax,
    chlorideMax: storeChlorideMax,
  },
  judge({ finish, finishes, silver, copper, chloride, silverMax, copperMax, chlorideMax }) {
    const open = [
      ...(OPEN_METALS.includes(BOARD_FINISHES[finish].coating) ? ['the board'] : []),
      ...finishes.filter((row) => LEAD_COATINGS[row.coating].metal === 'silver').map((row) => row.component),
    ]
    const stated = [silver, copper, chloride].some((value) => value !== undefined)
    if (!stated && open.length === 0)
      return notApplicable(
        'No surface leaves silver or copper open to the air, and nothing is stated of the air of the store.',
      )
    const asked = [
      { read: storeSilverFilm, value: silver, max: silverMax, needed: open.length > 0 },
      { read: storeCopperFilm, value: copper, max: copperMax, needed: false },
      { read: storeChloride, value: chloride, max: chlorideMax, needed: open.length > 0 },
    ]
    return judgedByParts({
      parts: asked.flatMap((one) => partOf(one, open)),
      noun: 'matters of the air',
      limit: [silverMax, copperMax, chlorideMax]
        .map(
          (max) =>
            `${max.limit.label}: at most ${formatAgainst(max.value, max.value, max.limit.unit).limit} (${governingName(max)})`,
        )
        .join('; '),
      working: [],
      sources: [silverMax, copperMax, chlorideMax].map(sourceOf),
      notes: [
        'A sealed, sulphur-free pack keeps the air of the store away while it is whole; a coupon tells of the air, not of the pack.',
      ],
    })
  },
})

function partOf(
  {
    read,
    value,
    max,
    needed,
  }: {
    readonly read: { readonly key: string; readonly label: string }
    readonly value: number | undefined
    readonly max: GoverningRequirement
    readonly needed: boolean
  },
  open: readonly string[],
): Part[] {
  const common = { subject: read.label, about: { matter: read.key } }
  if (value === undefined)
    return needed
      ? [
          {
            ...common,
            verdict: 'undetermined',
            measured: { open },
            found: `not stated, and ${open.join(', ')} ${open.length === 1 ? 'leaves' : 'leave'} silver or copper open to it.`,
            remedy: { message: 'Expose a coupon in the store for a month and state what it shows.' },
          },
        ]
      : []
  const { unit } = max.limit
  const part = partOn({
    ...common,
    found: formatAgainst(value, max.value, unit).found,
    margin: { found: value, limit: max.value, unit, direction: 'at most', guardBand: 0 },
  })
  return part.verdict === 'meets'
    ? [part]
    : [
        {
          ...part,
          remedy: {
            message:
              'Keep them in sealed, sulphur-free packs, filter the air of the store, or store them elsewhere.',
          },
        },
      ]
}
