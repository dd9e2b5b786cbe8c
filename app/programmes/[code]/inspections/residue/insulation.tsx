import { Curves } from '@/app/drawing/curves'
import { governingFor, valueOf } from '@/app/pictures/value-of'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { INSULATION_CONDITIONS, type InsulationConditionKey } from '@/shared/materials/insulation-conditions'
import { insulationResistanceMin } from '@/shared/plan/limits/assessment-residue'
import { insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { insulationNeeded } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { JudgedRecords } from '../judged-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'

type Reading = RecordOf<'insulation-resistance'>

/** Resistance over the hours in the chamber, each condition by itself: they are not interchangeable. */
export function Insulation({ view }: { view: ProgrammeView }) {
  const readings = recordsOfKind(view.state.facts.records, 'insulation-resistance')
  const asked = valueOf(view, insulationTest)
  const conditions = [...new Set(readings.map(({ condition }) => condition))].sort(
    (a, b) => Number(b === asked) - Number(a === asked),
  )
  const limitMOhm = Math.max(
    governingFor(view, insulationResistanceMin).value,
    valueOf(view, insulationNeeded) ?? 0,
  )
  return (
    <JudgedRecords
      view={view}
      kind="insulation-resistance"
      rule="insulation-resistance"
      heading="Insulation resistance in damp heat"
      record="Record readings"
      none="No reading is recorded"
      first="First put comb patterns into damp heat, and record their resistance hour by hour."
    >
      <div className="picture-row">
        {conditions.map((condition) => (
          <UnderCondition
            key={condition}
            condition={condition}
            asked={condition === asked}
            readings={readings.filter((reading) => reading.condition === condition)}
            limitMOhm={limitMOhm}
          />
        ))}
      </div>
    </JudgedRecords>
  )
}

interface UnderConditionProps {
  condition: InsulationConditionKey
  asked: boolean
  readings: readonly Reading[]
  limitMOhm: number
}

function UnderCondition({ condition, asked, readings, limitMOhm }: UnderConditionProps) {
  const { label, countsFromHours, lastsHours, source } = INSULATION_CONDITIONS[condition]
  const patterns = [...new Set(readings.map(({ pattern }) => pattern))]
  const found = readings.map(({ resistanceMOhm }) => resistanceMOhm).filter((resistance) => resistance > 0)
  const [lowest, highest] = [Math.min(limitMOhm, ...found), Math.max(limitMOhm, ...found)]
  return (
    <Curves
      title={`${label}${asked ? ', as asked' : ''}`}
      description={`Resistance of ${patterns.length} patterns over ${lastsHours} hours against at least ${limitMOhm} MΩ; readings count from ${countsFromHours} h.`}
      across={{
        label: 'In the chamber',
        unit: 'h',
        from: 0,
        to: Math.max(lastsHours, ...readings.map(({ hours }) => hours)),
      }}
      up={{
        label: 'Resistance',
        unit: 'MΩ',
        from: 10 ** Math.floor(Math.log10(lowest) - 0.01),
        to: 10 ** Math.ceil(Math.log10(highest) + 0.01),
        log: true,
      }}
      curves={patterns.map((pattern) => ({
        name: pattern.length > 14 ? `${pattern.slice(0, 13)}…` : pattern,
        heavy: true,
        points: readings
          .filter((reading) => reading.pattern === pattern && reading.resistanceMOhm > 0)
          .sort((a, b) => a.hours - b.hours)
          .map(({ hours, resistanceMOhm }) => [hours, resistanceMOhm] as const),
      }))}
      points={readings
        .filter(({ resistanceMOhm }) => resistanceMOhm > 0)
        .map(({ hours, resistanceMOhm }) => ({ x: hours, y: resistanceMOhm, name: '' }))}
      limits={[{ y: limitMOhm, name: `at least ${formatQuantity(limitMOhm, 'MΩ')}`, beyond: 'below' }]}
      upright={{ x: countsFromHours, name: `counts from ${countsFromHours} h` }}
      numbers={{
        columns: [
          { label: 'Pattern' },
          { label: 'Hours' },
          { label: 'Resistance' },
          { label: 'Counts', set: 'text' },
        ],
        rows: readings.map(({ pattern, hours, resistanceMOhm }) => [
          pattern,
          String(hours),
          formatQuantity(resistanceMOhm, 'MΩ'),
          hours < countsFromHours ? 'not yet' : resistanceMOhm >= limitMOhm ? 'inside' : 'outside',
        ]),
      }}
      note={`${source.cite} (${source.how}).`}
      marginValue={104}
    />
  )
}
