import type { Department } from '@/shared/plan/department'
import type { Place } from '@/shared/place'
import { defectChartLabel } from '@/shared/charts/defect-chart-kinds'
import { defectSignalsAnswered } from '@/shared/rules/assessment/defect-signals-answered'
import { openDefectSignals } from '@/shared/charts/open-defect-signals'
import { chartSignalsAnsweredRule } from '@/shared/rules/control/chart-signals-answered'
import { openLogSignals } from '@/shared/charts/open-signals'
import type { Judgement } from './judgement'
import type { OpenTask } from './open-task'
import type { ProgrammeState } from './programme-state'

/** Signals while they are fresh: those of logs wait for production, those of what inspections find for quality. */
export function openSignals(
  department: Department,
  { facts }: Pick<ProgrammeState, 'facts'>,
  { findings }: Pick<Judgement, 'findings'>,
): OpenTask[] {
  const entry = (open: number, of: string, place: Place): OpenTask => ({
    verb: 'find the cause',
    message: `${open === 1 ? '1 signal' : `${open} signals`} of ${of}`,
    department,
    dueOn: null,
    place,
  })
  const fails = ({ id }: { readonly id: string }) => findings.get(id)?.verdict === 'fails'
  if (department === 'production' && fails(chartSignalsAnsweredRule))
    return openLogSignals(facts).map(({ log: { code }, open }) =>
      entry(open, `log ${code}`, { kind: 'log', log: code, part: 'signals' }),
    )
  if (department === 'quality' && fails(defectSignalsAnswered))
    return openDefectSignals(facts).map(({ chart, open }) =>
      entry(open, `chart ${defectChartLabel(chart)}`, { kind: 'defect chart', chart }),
    )
  return []
}
