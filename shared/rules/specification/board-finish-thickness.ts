import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { tinCoatingMin, tinCoatingMax } from '@/shared/plan/limits/finishes'
import { boardFinish, boardFinishMin, boardFinishMax } from '@/shared/plan/parameters/finishes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Judged, type Margin } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { measure } from '@/shared/rules/measure'
import { tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import type { Source } from '@/shared/sources/source'

/** The thickness a finish must have by its own standard, or by the programme's window for tin and tin-lead. */
interface ThicknessWindow {
  readonly minUm: number
  readonly maxUm?: number | undefined
  readonly document: string
  readonly source: Source
}

export const boardFinishThickness = rule({
  id: 'board-finish-thickness',
  title: 'Thickness of the board finish',
  why: 'Too thin, and the compound under the coating reaches the surface in store and nothing wets; too thick, and holes close, edges slump and the finish costs more than it gives.',
  formula:
    'least and most ordered within the window of the finish’s own standard, or the programme’s of tin and tin-lead',
  stage: 'specification',
  version: 2,
  reads: {
    finish: boardFinish,
    ordered: boardFinishMin,
    orderedMax: optional(boardFinishMax),
    tinMin: tinCoatingMin,
    tinMax: tinCoatingMax,
  },
  judge({ finish: key, ordered, orderedMax, tinMin, tinMax }) {
    const finish: BoardFinish = BOARD_FINISHES[key]
    const window = finishWindow(finish, tinMin, tinMax)
    if (!window)
      return notApplicable(
        `${finish.label}: no thickness window of its own; whether it may be soldered is judged elsewhere.`,
      )
    if (orderedMax !== undefined && orderedMax < ordered) {
      return undetermined(
        `The order asks at least ${formatQuantity(ordered, 'µm')} and at most ${formatQuantity(orderedMax, 'µm')}.`,
        ['a most thickness of the board finish that is not below its least'],
      )
    }
    const margin = tightest(...marginsOf(window, ordered, orderedMax))
    return {
      verdict: verdictOn(margin),
      found: `${finish.label}: at least ${formatQuantity(ordered, 'µm')}${orderedMax === undefined ? '' : `, at most ${formatQuantity(orderedMax, 'µm')}`} ordered.`,
      limit: inWords(orderedMax === undefined ? { ...window, maxUm: undefined } : window),
      margin,
      measured: {
        finish: key,
        orderedMin: measure(ordered, 'µm'),
        ...(orderedMax !== undefined && { orderedMax: measure(orderedMax, 'µm') }),
      },
      working: [
        { label: 'Ordered, least', result: formatQuantity(ordered, 'µm') },
        { label: 'Window', result: inWords(window) },
      ],
      sources: [window.source],
      ...remedyFor(window, ordered, orderedMax),
      notes: [
        ...(orderedMax === undefined ? ['The order sets no most: only the least is judged.'] : []),
        ...(finish.note ? [finish.note] : []),
      ],
    }
  },
})

/** Undefined for a finish that has no window. */
export function finishWindow(
  finish: BoardFinish,
  min: GoverningRequirement,
  max: GoverningRequirement,
): ThicknessWindow | undefined {
  if (finish.window) return { ...finish.window, document: finish.window.source.cite }
  if (finish.coating !== 'tin' && finish.coating !== 'tin-lead') return undefined
  return {
    minUm: min.value,
    maxUm: max.value,
    document: [...new Set([min.document, max.document])].join('; '),
    source: min.limit.byDefault.from,
  }
}

function marginsOf(
  { minUm, maxUm }: ThicknessWindow,
  ordered: number,
  orderedMax: number | undefined,
): [Margin, ...Margin[]] {
  // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
  const common = { unit: 'µm', guardBand: 0 } as const
  const min: Margin = { ...common, found: ordered, limit: minUm, direction: 'at least' }
  if (maxUm === undefined) return [min]
  // Even where the order sets no most, its least must not lie above the window.
  return [min, { ...common, found: orderedMax ?? ordered, limit: maxUm, direction: 'at most' }]
}

function remedyFor(
  { minUm, maxUm }: ThicknessWindow,
  ordered: number,
  orderedMax: number | undefined,
): Pick<Judged, 'remedy'> {
  const minWrong = ordered < minUm || (maxUm !== undefined && ordered > maxUm)
  const maxWrong = maxUm !== undefined && orderedMax !== undefined && orderedMax > maxUm
  const atLeast = `at least ${formatQuantity(minUm, 'µm')}`
  const atMost = `at most ${formatQuantity(maxUm ?? minUm, 'µm')}`
  if (minWrong && maxWrong) return { remedy: { message: `Order ${atLeast} and ${atMost} of finish.` } }
  if (minWrong) {
    return {
      remedy: { message: `Order ${atLeast} of finish.`, parameter: boardFinishMin.key, value: minUm },
    }
  }
  if (maxWrong) {
    return { remedy: { message: `Order ${atMost} of finish.`, parameter: boardFinishMax.key, value: maxUm } }
  }
  return {}
}

const inWords = ({ minUm, maxUm, document }: ThicknessWindow): string =>
  maxUm === undefined
    ? `At least ${formatQuantity(minUm, 'µm')} (${document})`
    : `${formatQuantity(minUm, '1')} to ${formatQuantity(maxUm, 'µm')} (${document})`
