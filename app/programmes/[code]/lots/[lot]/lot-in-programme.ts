import { lotAddress } from '@/app/addresses'
import type { LotAt } from '@/app/lots/lot-at'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { conditionsToStartFrom } from '@/shared/lot-tests/conditions-to-start-from'
import type { Lot } from '@/shared/records/lot'
import { testLot } from './actions'

/** A lot that the programme recorded itself, before the works kept lots; undefined for one of the works. */
export const lotInProgramme = (view: ProgrammeView, lot: Lot): LotAt | undefined =>
  lot.atWorks
    ? undefined
    : {
        names: { programme: view.code },
        address: lotAddress(view.code, lot.code),
        actor: view.actor,
        today: view.state.facts.today,
        instruments: view.state.facts.records.instruments,
        starts: (of, method) => conditionsToStartFrom(view.state.facts, of, method),
        testLot,
      }
