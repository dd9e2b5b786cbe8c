import { BOARD_FINISHES, type BoardFinish, type BoardFinishKey } from '@/shared/materials/board-finishes'
import { FIRST_COMPOUND_UM } from '@/shared/materials/growth-laws'
import { LEAD_COATINGS, underTin, type LeadCoating } from '@/shared/materials/lead-finishes'
import { tinVolumeShare } from '@/shared/materials/metals'
import type { Coat } from '@/shared/physics/intermetallic'
import { boardFinishMin, leadFinishes, type LeadFinish } from '@/shared/plan/parameters/finishes'
import { boardStorageMonths, leadStorageMonths } from '@/shared/plan/parameters/storage'
import type { Stored } from './stored-coat'

interface InStore {
  readonly finish: BoardFinishKey
  readonly boardUm: number
  readonly nickelUm: number
  readonly finishes: readonly LeadFinish[]
  readonly boardMonths: number
  readonly leadMonths: number
}

/** Every coating of board and leads that has tin to lose to compound in store. */
export function storedCoats({ finish: key, boardUm, nickelUm, finishes, ...months }: InStore): Stored[] {
  const finish: BoardFinish = BOARD_FINISHES[key]
  return [
    ...(growsCompound(key)
      ? [
          {
            subject: 'Board',
            about: { surface: 'board' },
            coat: coatOf(boardUm, finish.tinPct, finish.hotDipped || finish.fused === true),
            months: months.boardMonths,
            under: nickelUm > 0 ? ('nickel' as const) : ('copper' as const),
            thicknessAt: { parameter: boardFinishMin.key },
            monthsAt: boardStorageMonths.key,
          },
        ]
      : []),
    ...finishes.flatMap((row, index): Stored[] => {
      const coating: LeadCoating = LEAD_COATINGS[row.coating]
      if (!coating.tinWindow) return []
      return [
        {
          subject: row.component,
          coat: coatOf(row.coatingUm, coating.tinPct, coating.molten === true),
          months: months.leadMonths,
          under: underTin(row),
          thicknessAt: { parameter: leadFinishes.key, row: index, column: 'coatingUm' },
          monthsAt: leadStorageMonths.key,
        },
      ]
    }),
  ]
}

/** Tin and solder coatings thick enough to have a store of tin; immersion tin goes by its shelf life. */
export const growsCompound = (key: BoardFinishKey): boolean =>
  BOARD_FINISHES[key].tinPct > 0 && key !== 'immersion-tin'

const coatOf = (coatingUm: number, tinPct: number, molten: boolean): Coat => ({
  coatingUm,
  tinShare: tinVolumeShare(tinPct),
  firstUm: molten ? FIRST_COMPOUND_UM.dipped.value : FIRST_COMPOUND_UM.plated.value,
})
