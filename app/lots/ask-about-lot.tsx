import { AskForm } from '@/app/programmes/[code]/actions/ask-form'
import { partsOfLot } from '@/app/programmes/[code]/lots/lot-parts'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { VERDICTS } from '@/shared/rules/finding'

interface AskAboutLotProps {
  readonly view: ProgrammeView
  /** As the programme calls it. */
  readonly lot: Lot
  /** Whether several programmes are asked in from one page. */
  readonly named?: boolean
}

/** Asks another department of the programme about a lot, in place. */
export const AskAboutLot = ({ view, lot, named = false }: AskAboutLotProps) => (
  <AskForm
    view={view}
    items={itemsAbout(view, lot)}
    beginning={`Lot ${lot.code} (${lot.part}): `}
    {...(named && { summary: `Ask another department in ${view.code}` })}
  />
)

/** The items whose findings speak of the lot, the worst finding's first; while none does, all that are evaluated. */
function itemsAbout(view: ProgrammeView, lot: Lot): string[] {
  const spoken = partsOfLot(view, lot).toSorted(
    (one, other) => VERDICTS.indexOf(other.part.verdict) - VERDICTS.indexOf(one.part.verdict),
  )
  const { items } = view.state
  const keys = spoken.flatMap(
    ({ rule }) =>
      items.find(({ definition }) => definition.rules.some(({ id }) => id === rule))?.definition.key ?? [],
  )
  return keys.length > 0
    ? [...new Set(keys)]
    : items.flatMap(({ definition: { key, stage } }) => (stage === 'evaluation' ? [key] : []))
}
