import { DefectSection } from '@/app/drawing/defect-section'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { JudgedRecords } from '../judged-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'

type Cut = RecordOf<'microsection'>
const DRAWN = 6
const USUAL_ANGLE_DEG = 20
/** Below this the barrel is too empty to draw a cavity in. */
const FULL_PCT = 90

/** Joints cut open: each judged, the newest drawn with their measured fill and angle. */
export function Sections({ view }: { view: ProgrammeView }) {
  const cuts = recordsOfKind(view.state.facts.records, 'microsection')
  const finding = view.judgement.findings.get('microsections-sound')
  const percent = (share: number | undefined) => (share === undefined ? '–' : formatQuantity(share, '%'))
  return (
    <JudgedRecords
      view={view}
      kind="microsection"
      rule="microsections-sound"
      heading="Microsections"
      record="Record a section"
      none="No joint was cut open"
      first="First cut a joint open, grind and etch it, and record what the section shows."
    >
      <RuledTable
        caption="Joints cut open"
        rows={cuts.map((cut, at) => ({ cut, verdict: finding?.parts?.[at]?.verdict }))}
        rowKey={({ cut }) => cut.id}
        columns={[
          { label: 'Joint', names: true, cell: ({ cut }) => cut.joint },
          { label: 'Assembly', cell: ({ cut }) => cut.assembly },
          { label: 'Hole filled', set: 'number', cell: ({ cut }) => percent(cut.fillPct) },
          { label: 'Voids', set: 'number', cell: ({ cut }) => percent(cut.voidPct) },
          {
            label: 'Contact angle',
            set: 'number',
            cell: ({ cut }) =>
              cut.contactAngleDeg === undefined ? '–' : formatQuantity(cut.contactAngleDeg, '°'),
          },
          { label: 'Crack', cell: ({ cut }) => (cut.cracked ? 'cracked' : 'none') },
          { label: 'Judged', cell: ({ verdict }) => verdict && <VerdictMark verdict={verdict} /> },
        ]}
      />
      <div className="defect-guide">
        {cuts
          .slice(-DRAWN)
          .reverse()
          .map((cut) => (
            <DefectSection key={cut.id} title={`${cut.joint} on ${cut.assembly}`} scene={sceneOf(cut)} />
          ))}
      </div>
      <p className="field-hint">
        Drawn from the fill and the angle measured, on a joint of common sizes; where no angle was measured,
        with {USUAL_ANGLE_DEG}°.
      </p>
    </JudgedRecords>
  )
}

const sceneOf = ({ fillPct, contactAngleDeg, voidPct = 0, cracked }: Cut) => ({
  fillet: { shareOfSound: 1, leadAngleDeg: Math.min(contactAngleDeg ?? USUAL_ANGLE_DEG, 140) },
  unfilled: Math.max(0, 1 - fillPct / 100),
  ...(cracked
    ? { also: 'crack' as const }
    : voidPct > 0 && fillPct >= FULL_PCT
      ? { also: 'void' as const }
      : {}),
  mark: cracked
    ? { message: 'crack beside the lead', at: [0.36, 0.3] as const }
    : { message: `filled to ${formatQuantity(fillPct, '%')}`, at: [0.39, (-1.1 * fillPct) / 100] as const },
})
