import { Curves } from '@/app/drawing/curves'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { survivalOf } from '@/shared/physics/joint-budget'
import { boardJoints } from '@/shared/plan/board-joints'
import {
  boardQuality,
  failureRateEdition,
  survivalTarget,
  surfaceMountJoints,
} from '@/shared/plan/parameters/joint-budget'
import { copperLayers } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { environment, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { predictedRates } from '@/shared/reliability/joint-budget-prediction'
import { orNothing, valueOf } from './value-of'

const EDITIONS = [
  { key: 'notice-2', name: 'Notice 2' },
  { key: 'base', name: 'base issue' },
] as const
const STEPS = 40

/** How many boards still have all their joints, year by year, by the handbook's two issues. */
export function SurvivalChart({ view }: { view: ProgrammeView }) {
  const rates = ratesOf(view)
  const years = valueOf(view, serviceYears)
  const target = valueOf(view, survivalTarget)
  if (!rates || years === undefined || target === undefined) return null
  const until = 2 * years
  const times = Array.from({ length: STEPS + 1 }, (_, step) => (until * step) / STEPS)
  const survivalPct = (fit: number, time: number): number =>
    time === 0 ? 100 : survivalOf(1, time, fit) * 100
  const worstPct = Math.min(target, ...rates.map(({ boardFit }) => survivalPct(boardFit, until)))
  return (
    <Section
      heading="Boards without a failed joint"
      lead="Joints in series at constant rates: the board holds only while every joint holds."
    >
      <Curves
        title="Boards that survive, by year"
        description={`Share of boards without a failed joint over ${formatQuantity(until, 'years')}: ${rates.map(({ name, boardFit }) => `${formatQuantity(survivalPct(boardFit, years), '%', 5)} after ${formatQuantity(years, 'years')} by the ${name}`).join(', ')}; at least ${formatQuantity(target, '%', 6)} is asked.`}
        across={{ label: 'In service', unit: 'years', from: 0, to: until }}
        up={{ label: 'Boards surviving', unit: '%', from: 100 - (100 - worstPct) * 1.25, to: 100 }}
        curves={rates.map(({ name, boardFit }, at) => ({
          name,
          heavy: at === 0,
          points: times.map((time) => [time, survivalPct(boardFit, time)] as const),
        }))}
        limits={[{ y: target, name: `at least ${formatQuantity(target, '%', 6)}`, beyond: 'below' }]}
        upright={{ x: years, name: 'service life' }}
        numbersPlace="beside"
        numbers={{
          columns: [{ label: 'In service' }, ...rates.map(({ name }) => ({ label: name }))],
          rows: [
            ['Rate of the board', ...rates.map(({ boardFit }) => formatQuantity(boardFit, 'FIT', 3))],
            ...[0.25, 0.5, 1, 1.5, 2].map((share) => [
              formatQuantity(share * years, 'years', 3),
              ...rates.map(({ boardFit }) => formatQuantity(survivalPct(boardFit, share * years), '%', 5)),
            ]),
          ],
        }}
        note="Random failures only: wear by temperature cycles is calculated apart, and defects that escape inspection are not in the rates."
      />
    </Section>
  )
}

/** The predicted rate of one board by each issue in question. */
function ratesOf(view: ProgrammeView): { name: string; boardFit: number }[] | undefined {
  const holes = valueOf(view, leadHoles)
  const layers = valueOf(view, copperLayers)
  const surroundings = valueOf(view, environment)
  const quality = valueOf(view, boardQuality)
  if (!holes || layers === undefined || !surroundings || !quality) return undefined
  const joints = boardJoints(holes, valueOf(view, surfaceMountJoints))
  const edition = valueOf(view, failureRateEdition)
  return orNothing(() =>
    EDITIONS.filter(({ key }) => edition === undefined || key === edition).map(({ key, name }) => ({
      name,
      boardFit: predictedRates(
        { holes, joints, layers, environment: surroundings, quality },
        key,
      ).rates.reduce((sum, { fit }) => sum + fit, 0),
    })),
  )
}
