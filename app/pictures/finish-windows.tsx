import { RangesInWindows, type RangeInWindow } from '@/app/drawing/ranges-in-windows'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { LEAD_BASES, LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { platingConfidenceMin, platingCoverageMin } from '@/shared/plan/limits/evaluation-plating'
import { brassBarrierMin, tinCoatingMin, tinCoatingMax } from '@/shared/plan/limits/finishes'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
  boardNickel,
  leadFinishes,
} from '@/shared/plan/parameters/finishes'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { platingSpreads, type PlatingSpread } from '@/shared/plating/plating-spreads'
import { fractionOf } from '@/shared/plan/limit-fraction'
import { finishWindow } from '@/shared/rules/specification/board-finish-thickness'
import { MAX_DRAWN } from './drawn-in-part'
import { governingFor, valueOf } from './value-of'

/** One bar and where its window is from. */
type Bar = Omit<RangeInWindow, 'message'> & { readonly kind: 'ordered' | 'measured'; readonly by: string }

/** The board's finish as ordered against its standard, and as measured against the order. */
export function BoardFinishWindow({ view }: { view: ProgrammeView }) {
  const key = valueOf(view, boardFinish)
  const min = valueOf(view, boardFinishMin)
  if (!key || min === undefined) return null
  const finish: BoardFinish = BOARD_FINISHES[key]
  const window = finishWindow(finish, governingFor(view, tinCoatingMin), governingFor(view, tinCoatingMax))
  if (!window) return null
  const nickel = valueOf(view, boardNickel)
  const ordered: Bar[] = [
    {
      kind: 'ordered',
      name: `${finish.label}, as ordered`,
      min,
      max: valueOf(view, boardFinishMax),
      window: { from: window.minUm, to: window.maxUm },
      by: window.document,
    },
    ...(finish.underlayer && nickel !== undefined
      ? [
          {
            kind: 'ordered' as const,
            name: 'Nickel under it, as ordered',
            min: nickel,
            max: undefined,
            window: { from: finish.underlayer.minUm, to: finish.underlayer.maxUm },
            by: finish.underlayer.source.cite,
          },
        ]
      : []),
  ]
  const measured = measuredOf(view, (lot, deposit) => lot.kind !== 'component' && deposit !== 'copper')
  return <Windows title="Board finish in its window" view={view} bars={[...ordered, ...measured]} />
}

/** Tin and barrier of every lead as ordered, and the lots' as measured. */
export function LeadFinishWindows({ view }: { view: ProgrammeView }) {
  const rows = valueOf(view, leadFinishes) ?? []
  const [min, max, barrier] = [tinCoatingMin, tinCoatingMax, brassBarrierMin].map((limit) =>
    governingFor(view, limit),
  ) as [Ruled, Ruled, Ruled]
  const ordered = rows.flatMap((row): Bar[] => [
    ...(LEAD_COATINGS[row.coating].tinWindow
      ? [
          {
            kind: 'ordered' as const,
            name: `${row.component}: ${LEAD_COATINGS[row.coating].label}`,
            min: row.coatingUm,
            max: row.coatingMostUm,
            window: { from: min.value, to: max.value },
            by: [...new Set([min.document, max.document])].join('; '),
          },
        ]
      : []),
    ...(LEAD_BASES[row.base].zinc && row.barrierUm !== undefined
      ? [
          {
            kind: 'ordered' as const,
            name: `${row.component}: ${row.barrier} on the brass`,
            min: row.barrierUm,
            max: undefined,
            window: { from: barrier.value },
            by: barrier.document,
          },
        ]
      : []),
  ])
  const measured = measuredOf(view, (lot) => lot.kind === 'component')
  return <Windows title="Lead finishes in their windows" view={view} bars={[...ordered, ...measured]} />
}

type Ruled = ReturnType<typeof governingFor>

function measuredOf(
  view: ProgrammeView,
  counts: (lot: PlatingSpread['lot'], deposit: PlatingSpread['deposit']) => boolean,
): Bar[] {
  const { coverage, confidence } = contentOf(view)
  return platingSpreads(view.state.facts, { coverage, confidence })
    .filter(({ lot, deposit }) => counts(lot, deposit))
    .map(({ lot, deposit, place, readings, mean, bounds, window }) => ({
      kind: 'measured',
      name: `Lot ${lot.code}, ${deposit}, ${place}: ${readings} readings`,
      min: bounds.lower,
      nominal: mean,
      max: bounds.upper,
      window: { from: window.minUm, to: window.maxUm },
      by: window.document,
    }))
}

const contentOf = (view: ProgrammeView) => ({
  coverage: fractionOf(governingFor(view, platingCoverageMin)),
  confidence: fractionOf(governingFor(view, platingConfidenceMin)),
})

function Windows({ title, view, bars }: { title: string; view: ProgrammeView; bars: readonly Bar[] }) {
  if (bars.length === 0) return null
  const { coverage, confidence } = contentOf(view)
  const drawn = bars.slice(0, MAX_DRAWN)
  return (
    <Section
      heading={title}
      lead="What is ordered lies in the window of its standard; what a lot measures, in what was ordered."
    >
      <RangesInWindows
        title={title}
        description={`Thickness in µm: ${drawn.map((bar) => `${bar.name} ${span(bar.min, bar.max)}, window ${windowText(bar)}`).join('; ')}.`}
        axis="Thickness, µm"
        rows={drawn.map((bar) => ({ ...bar, message: '' }))}
        numbers={{
          columns: [
            { label: 'Of' },
            { label: 'Least' },
            { label: 'Mean' },
            { label: 'Most' },
            { label: 'Window' },
            { label: 'By', set: 'text' },
          ],
          rows: bars.map((bar) => [
            bar.name,
            um(bar.min),
            bar.nominal === undefined ? '–' : um(bar.nominal),
            bar.max === undefined ? 'open' : um(bar.max),
            windowText(bar),
            bar.by,
          ]),
        }}
        note={`${bars.some(({ kind }) => kind === 'measured') ? `Measured: diamond at the mean, ends at the one-sided tolerance bounds of ${formatNumber(coverage * 100)} % of the places with ${formatNumber(confidence * 100)} % confidence. ` : ''}${bars.some(({ max }) => max === undefined) ? 'An arrow: no most is ordered.' : ''}`}
      />
    </Section>
  )
}

const um = (value: number): string => formatQuantity(value, 'µm', 3)
const span = (min: number, max: number | undefined): string =>
  max === undefined ? `at least ${um(min)}` : `${formatNumber(min, 3)} to ${um(max)}`
const windowText = ({ window }: Bar): string => (window ? span(window.from, window.to) : 'none')
