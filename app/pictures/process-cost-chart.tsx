import { priced } from '@/app/ui/priced'
import { Curves } from '@/app/drawing/curves'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { costOfBoard } from '@/shared/cost/cost-of-board'
import { amountOf, isExact, isKnown, shareOfEach, sumOf, times, type Amount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { boardJoints } from '@/shared/plan/board-joints'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import { valueOf } from './value-of'

const STEPS = 60

type End = 'from' | 'to'
/** One end of an amount that is drawn because it is known. */
const ended = (amount: Amount, end: End): number => (isKnown(amount) ? amount[end] : NaN)

/** Which ends of a process's cost are drawn, and what each line's name ends in. */
const endsDrawn = (amount: Amount): readonly { readonly end: End; readonly name: string }[] =>
  isExact(amount)
    ? [{ end: 'to', name: '' }]
    : [
        { end: 'from', name: ', at least' },
        { end: 'to', name: ', at most' },
      ]

/** What a board costs by each process considered, rework and field repair counted, against how many are made. */
export function ProcessCostChart({ view }: { view: ProgrammeView }) {
  const costs = valueOf(view, processCosts)
  const holes = valueOf(view, leadHoles)
  const volume = valueOf(view, annualVolume)
  if (!costs || !holes || volume === undefined) return null
  const chosen = valueOf(view, solderingProcess)
  const { total: joints } = boardJoints(holes)
  const [from, to] = [Math.max(1, volume / 20), volume * 20]
  const volumes = Array.from({ length: STEPS + 1 }, (_, step) => from * (to / from) ** (step / STEPS))
  const at = (row: ProcessCost, boards: number): Amount => costOfBoard(row, joints, boards).total
  const known = costs.filter((row) => isKnown(at(row, volume)))
  if (known.length === 0) return null
  const max = Math.max(...known.map((row) => ended(at(row, volume), 'to'))) * 2
  return (
    <Section
      heading="Cost of a board by process"
      lead="Set-up spread over a year’s boards, joints, and the rework and field repair that its defects bring."
    >
      <Curves
        title="Cost of a board against boards per year"
        description={`Cost of a board by ${costs.map(({ process }) => process).join(', ')}; at ${formatQuantity(volume, 'boards', 6)} a year ${costs.map((row) => `${row.process} ${amountInWords(at(row, volume))}`).join(', ')}.`}
        across={{ label: 'Boards per year', unit: '1', from, to, log: true }}
        up={{ label: priced('Cost of a board'), unit: 'currency', from: 0, to: max }}
        curves={known.flatMap((row) =>
          endsDrawn(at(row, volume)).map(({ end, name }) => ({
            name: `${row.process}${name}`,
            heavy: row.process === chosen,
            points: volumes
              .map((boards) => [boards, ended(at(row, boards), end)] as const)
              .filter(([, cost]) => cost <= max),
          })),
        )}
        upright={{ x: volume, name: 'as specified' }}
        marginValue={70}
        numbersPlace="beside"
        numbers={{
          columns: [
            { label: 'Process' },
            { label: priced('Set-up, a board') },
            { label: priced('Board and joints') },
            { label: priced('Rework here') },
            { label: priced('Field repair') },
            { label: priced('In all') },
          ],
          rows: costs.map((row) => {
            const { rework, total } = costOfBoard(row, joints, volume)
            return [
              row.process,
              amountInWords(shareOfEach(amountOf(row.fixed), volume)),
              amountInWords(sumOf([amountOf(row.perBoard), times(amountOf(row.perJoint), joints)])),
              amountInWords(rework.here, 3),
              amountInWords(rework.inService, 3),
              amountInWords(total),
            ]
          }),
        }}
        note="In the programme’s currency. Where two lines cross, they cost the same. Of a range both ends are drawn; what is not known is in the table only."
      />
    </Section>
  )
}
