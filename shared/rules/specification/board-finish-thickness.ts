import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { tinCoatingLeast, tinCoatingMost } from '@/shared/plan/limits/finishes'
import { boardFinish, boardFinishLeast, boardFinishMost } from '@/shared/plan/parameters/finishes'
import type { Ruling } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Judged, type Margin } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { measure } from '@/shared/rules/measure'
import { tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import type { Source } from '@/shared/sources/source'

/** The thickness a finish must have by its own standard, or by the programme's window for tin and tin-lead. */
interface ThicknessWindow {
  readonly leastUm: number
  readonly mostUm?: number | undefined
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
    ordered: boardFinishLeast,
    orderedMost: optional(boardFinishMost),
    tinLeast: tinCoatingLeast,
    tinMost: tinCoatingMost,
  },
  judge({ finish: key, ordered, orderedMost, tinLeast, tinMost }) {
    const finish: BoardFinish = BOARD_FINISHES[key]
    const window = finishWindow(finish, tinLeast, tinMost)
    if (!window)
      return notApplicable(
        `${finish.label}: no thickness window of its own; whether it may be soldered is judged elsewhere.`,
      )
    if (orderedMost !== undefined && orderedMost < ordered) {
      return undetermined(
        `The order asks at least ${formatQuantity(ordered, 'µm')} and at most ${formatQuantity(orderedMost, 'µm')}.`,
        ['a most thickness of the board finish that is not below its least'],
      )
    }
    const margin = tightest(...marginsOf(window, ordered, orderedMost))
    return {
      verdict: verdictOn(margin),
      found: `${finish.label}: at least ${formatQuantity(ordered, 'µm')}${orderedMost === undefined ? '' : `, at most ${formatQuantity(orderedMost, 'µm')}`} ordered.`,
      limit: inWords(orderedMost === undefined ? { ...window, mostUm: undefined } : window),
      margin,
      measured: {
        finish: key,
        orderedLeast: measure(ordered, 'µm'),
        ...(orderedMost !== undefined && { orderedMost: measure(orderedMost, 'µm') }),
      },
      working: [
        { label: 'Ordered, least', result: formatQuantity(ordered, 'µm') },
        { label: 'Window', result: inWords(window) },
      ],
      sources: [window.source],
      ...remedyFor(window, ordered, orderedMost),
      notes: [
        ...(orderedMost === undefined ? ['The order sets no most: only the least is judged.'] : []),
        ...(finish.note ? [finish.note] : []),
      ],
    }
  },
})

/** Undefined for a finish that has no window. */
export function finishWindow(finish: BoardFinish, least: Ruling, most: Ruling): ThicknessWindow | undefined {
  if (finish.window) return { ...finish.window, document: finish.window.source.cite }
  if (finish.coating !== 'tin' && finish.coating !== 'tin-lead') return undefined
  return {
    leastUm: least.value,
    mostUm: most.value,
    document: [...new Set([least.document, most.document])].join('; '),
    source: least.limit.byDefault.from,
  }
}

function marginsOf(
  { leastUm, mostUm }: ThicknessWindow,
  ordered: number,
  orderedMost: number | undefined,
): [Margin, ...Margin[]] {
  // What is ordered may equal the limit: the lot's own thickness is judged when it comes.
  const common = { unit: 'µm', guardBand: 0 } as const
  const least: Margin = { ...common, found: ordered, limit: leastUm, direction: 'at least' }
  if (mostUm === undefined) return [least]
  // Even where the order sets no most, its least must not lie above the window.
  return [least, { ...common, found: orderedMost ?? ordered, limit: mostUm, direction: 'at most' }]
}

function remedyFor(
  { leastUm, mostUm }: ThicknessWindow,
  ordered: number,
  orderedMost: number | undefined,
): Pick<Judged, 'remedy'> {
  const leastWrong = ordered < leastUm || (mostUm !== undefined && ordered > mostUm)
  const mostWrong = mostUm !== undefined && orderedMost !== undefined && orderedMost > mostUm
  const atLeast = `at least ${formatQuantity(leastUm, 'µm')}`
  const atMost = `at most ${formatQuantity(mostUm ?? leastUm, 'µm')}`
  if (leastWrong && mostWrong) return { remedy: { says: `Order ${atLeast} and ${atMost} of finish.` } }
  if (leastWrong) {
    return {
      remedy: { says: `Order ${atLeast} of finish.`, parameter: boardFinishLeast.key, value: leastUm },
    }
  }
  if (mostWrong) {
    return { remedy: { says: `Order ${atMost} of finish.`, parameter: boardFinishMost.key, value: mostUm } }
  }
  return {}
}

const inWords = ({ leastUm, mostUm, document }: ThicknessWindow): string =>
  mostUm === undefined
    ? `At least ${formatQuantity(leastUm, 'µm')} (${document})`
    : `${formatQuantity(leastUm, '1')} to ${formatQuantity(mostUm, 'µm')} (${document})`
