import { boardAddress, findingAddress, reviseAddress } from '@/app/addresses'
import { BoardPlan } from '@/app/drawing/board-plan'
import { valueOf } from '@/app/pictures/value-of'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { componentPlaces } from '@/shared/plan/parameters/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { formatNumber } from '@/shared/quantity/format'
import type { BoardOutline } from '@/shared/inspection/board-outline'
import { defectsByComponent } from '@/shared/inspection/defects-by-component'
import type { DefectFacts } from './defect-facts'
import { outlineOf } from './outline'
import type { PlanRead } from './plan-read'

const OUTLINE_FROM: Record<BoardOutline['from'], string> = {
  specification: 'Outline as specified.',
  'cleanliness test': 'Outline as the cleanliness test measured the board.',
  'defects placed': 'The board’s size is not specified: the outline only goes round the defects.',
}

interface WhereTheyLieProps {
  view: ProgrammeView
  facts: DefectFacts
  /** The board as its files have it, where they were confirmed. */
  plan: PlanRead | undefined
}

/** Defects on the board’s plan against the travel, and by component, each with its test. */
export function WhereTheyLie({ view, facts, plan }: WhereTheyLieProps) {
  const outline = plan ?? outlineOf(view)
  const places = valueOf(view, componentPlaces)
  const placed = view.state.facts.records.inspections
    .flatMap(({ defects }) => defects)
    .flatMap(({ kind, xMm, yMm }) => (xMm === undefined || yMm === undefined ? [] : [{ kind, xMm, yMm }]))
  const finding = view.judgement.findings.get('defect-direction')
  if (facts.record.defective === 0) return null
  return (
    <Section
      heading="Defect locations"
      aside={finding && <a href={findingAddress(view.code, finding.rule)}>Working of the direction test</a>}
    >
      {places && finding ? (
        <p className="verdict-line">
          <VerdictMark verdict={finding.verdict} size={28} /> {finding.found}
        </p>
      ) : (
        <p>
          Say{' '}
          <a href={reviseAddress(view.code, 'defects-against-budget', componentPlaces.key)}>
            where components stand
          </a>
          , and defects are tested for an effect of the direction of travel.
        </p>
      )}
      <div className="picture-row">
        {outline && placed.length > 0 && (
          <div>
            <BoardPlan
              title="Defects on the board, soldered side"
              outlineMm={plan?.outlineMm ?? rectangle(outline)}
              joints={plan?.joints ?? []}
              components={(places ?? []).flatMap(({ component, xMm, yMm }) =>
                xMm === undefined || yMm === undefined ? [] : [{ component, xMm, yMm }],
              )}
              defects={placed}
              travel="right"
            />
            <p className="drawing-note">
              {'from' in outline ? (
                OUTLINE_FROM[outline.from]
              ) : (
                <>
                  Outline and joints as{' '}
                  <a href={boardAddress(view.code, outline.evidence)}>{outline.fileName}</a> has them, seen
                  from below.
                </>
              )}
            </p>
          </div>
        )}
        <ByComponent view={view} facts={facts} />
      </div>
    </Section>
  )
}

const rectangle = ({ lengthMm, widthMm }: Pick<BoardOutline, 'lengthMm' | 'widthMm'>) => [
  { xMm: 0, yMm: 0 },
  { xMm: lengthMm, yMm: 0 },
  { xMm: lengthMm, yMm: widthMm },
  { xMm: 0, yMm: widthMm },
]

const TELLING = 0.05
const SHOWN = 8

function ByComponent({ view, facts: { record } }: { view: ProgrammeView; facts: DefectFacts }) {
  const holes = valueOf(view, leadHoles)
  if (!holes || record.assembliesSeen === 0) return null
  const { components, unplaced, effect } = defectsByComponent(record, holes)
  const struck = components.filter(({ defective }) => defective > 0).slice(0, SHOWN)
  return (
    <div>
      <RuledTable
        caption="By component"
        rows={struck}
        rowKey={({ component }) => component}
        columns={[
          { label: 'Component', names: true, cell: ({ component }) => component },
          { label: 'Defective', set: 'number', cell: ({ defective }) => defective },
          {
            label: 'Joints inspected',
            set: 'number',
            cell: ({ jointsSeen }) => formatNumber(jointsSeen, 12),
          },
          { label: 'Per million', set: 'number', cell: ({ perMillion }) => formatNumber(perMillion, 3) },
        ]}
      />
      <p className="drawing-note">
        {effect &&
          (effect.pValue < TELLING
            ? `${effect.worst} stands out: so uneven a spread has a chance of ${formatNumber(effect.pValue, 2)}.`
            : `So uneven a spread is no surprise (chance ${formatNumber(effect.pValue, 2)}).`)}
        {effect && !effect.reliable && ' The counts are small for this test (chi-square).'}
        {unplaced > 0 && ` ${unplaced} joints name no component of the hole table.`}
      </p>
    </div>
  )
}
