import { Curves } from '@/app/drawing/curves'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { costOfBoard } from '@/shared/cost/cost-of-board'
import { boardJoints } from '@/shared/plan/board-joints'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { valueOf } from './value-of'

const STEPS = 60

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
  const at = (row: (typeof costs)[number], boards: number): number => costOfBoard(row, joints, boards).total
  const max = Math.max(...costs.map((row) => at(row, volume))) * 2
  const money = (value: number): string => formatQuantity(value, 'currency')
  return (
    <Section
      heading="Cost of a board by process"
      lead="Set-up spread over a year’s boards, joints, and the rework and field repair that its defects bring."
    >
      <Curves
        title="Cost of a board against boards per year"
        description={`Cost of a board by ${costs.map(({ process }) => process).join(', ')}; at ${formatQuantity(volume, 'boards', 6)} a year ${costs.map((row) => `${row.process} ${money(at(row, volume))}`).join(', ')}.`}
        across={{ label: 'Boards per year', unit: '1', from, to, log: true }}
        up={{ label: 'Cost of a board', unit: 'currency', from: 0, to: max }}
        curves={costs.map((row) => ({
          name: row.process,
          heavy: row.process === chosen,
          points: volumes
            .map((boards) => [boards, at(row, boards)] as const)
            .filter(([, cost]) => cost <= max),
        }))}
        upright={{ x: volume, name: 'as specified' }}
        marginValue={70}
        numbersPlace="beside"
        numbers={{
          columns: [
            { label: 'Process' },
            { label: 'Set-up, a board' },
            { label: 'Board and joints' },
            { label: 'Rework here' },
            { label: 'Field repair' },
            { label: 'In all' },
          ],
          rows: costs.map((row) => {
            const { rework, total } = costOfBoard(row, joints, volume)
            return [
              row.process,
              money(row.fixed / volume),
              money(row.perBoard + row.perJoint * joints),
              formatNumber(rework.here, 3),
              formatNumber(rework.inService, 3),
              money(total),
            ]
          }),
        }}
        note="In the programme’s currency. Where two lines cross, they cost the same."
      />
    </Section>
  )
}
