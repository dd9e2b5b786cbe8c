import { FEWEST_TO_CHART } from '@/shared/charts/chart-stretches'
import { chartRules } from '@/shared/plan/parameters/control-charts'
import { defectChartPhases, defectCharts } from '@/shared/plan/parameters/defect-charts'
import type { Inspection } from '@/shared/records/inspection'
import { answerToDefects, type DefectSignalAnswer } from '@/shared/charts/defect-signal-answers'
import type { RunRuleSet } from '@/shared/charts/run-rule-sets'
import { RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { judgedByParts } from '@/shared/rules/parts'
import { inspections } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { defectSignalAnswers } from '@/shared/rules/assembly-record-sources'
import {
  defectChart,
  isThin,
  specifiedDefectCharts,
  type DefectChartChoice,
} from '@/shared/charts/defect-chart'
import { DEFECT_CHARTS, defectChartLabel } from '@/shared/charts/defect-chart-kinds'
import { defectSignals } from '@/shared/charts/defect-signals'

export const defectSignalsAnswered = rule({
  id: 'defect-signals-answered',
  title: 'Signals of the charts of defects answered',
  why: 'A rate may lie within its budget and yet have changed: soldering got worse, or inspection did. The day it changed is when its cause can be found.',
  formula: 'every signal of the charts of defects has an answer',
  stage: 'assessment',
  version: 3,
  reads: {
    asked: optional(chartRules),
    charts: optional(defectCharts),
    phases: optional(defectChartPhases),
    inspections,
    answers: defectSignalAnswers,
  },
  judge({ asked = 'limits', charts, phases, inspections: looks, answers }): Judged {
    const rules = RUN_RULE_SETS[asked].asked
    const limit = `Every signal (${rules.map(({ message }) => message).join('; ')}) of a chart of defects has a recorded cause and action.`
    if (looks.length === 0)
      return undetermined('No assembly is inspected yet: there is nothing to chart.', ['inspections'], limit)
    const charted = specifiedDefectCharts(charts, phases).map((choice) =>
      judgeChart(looks, choice, { asked, named: charts !== undefined }, answers),
    )
    return judgedByParts({
      parts: charted.map(({ part }) => part),
      noun: 'charts',
      limit,
      working: charted.map(({ choice, signals, open }) => ({
        label: defectChartLabel(choice.chart),
        formula: DEFECT_CHARTS[choice.chart].formula,
        result:
          signals === 0 ? 'no signal' : `${inNumber(signals)} to be answered, ${open} without an answer`,
      })),
      sources: distinctSources([
        rules[0].source,
        ...charted.map(({ choice }) => DEFECT_CHARTS[choice.chart].source),
      ]),
      notes: [
        ...(charted.some(({ thin }) => thin)
          ? [
              'Samples with fewer than one defect expected are small for these charts: a single defect may lie beyond the limits. Chart the assemblies of a day together where that is so.',
            ]
          : []),
        'A signal below the limits is answered too: something got better, or somebody looked less well. “Looked for, no cause found” is an answer.',
        'Whether the rate is low enough is judged against the budget, not here.',
      ],
    })
  },
})

const inNumber = (signals: number): string => (signals === 1 ? '1 signal' : `${signals} signals`)

interface JudgedDefectChart {
  readonly choice: DefectChartChoice
  readonly part: Part
  readonly signals: number
  readonly open: number
  readonly thin: boolean
}

function judgeChart(
  looks: readonly Inspection[],
  choice: DefectChartChoice,
  { asked, named: isNamed }: { readonly asked: RunRuleSet; readonly named: boolean },
  answers: readonly DefectSignalAnswer[],
): JudgedDefectChart {
  const named = { subject: `Chart ${defectChartLabel(choice.chart)}`, about: { chart: choice.chart } }
  const found = defectChart(looks, choice, RUN_RULE_SETS[asked].asked)
  const signals = defectSignals(found, choice, asked)
  const open = signals.filter((signal) => !answerToDefects(answers, signal))
  const thin = !('message' in found) && isThin(found)
  const judged = (part: Omit<Part, 'subject' | 'about'>): JudgedDefectChart => ({
    choice,
    part: { ...named, ...part },
    signals: signals.length,
    open: open.length,
    thin,
  })
  if ('message' in found && found.because === 'unfit')
    return judged({
      verdict: 'undetermined',
      found: found.message,
      remedy: { message: 'Let the specification name a chart that suits the samples.' },
    })
  // A chart that the specification names is asked for; the usual one waits until there is something to chart.
  if ('message' in found && found.because === 'few' && isNamed)
    return judged({
      verdict: 'undetermined',
      measured: { samples: count(found.samples.length), needed: count(FEWEST_TO_CHART) },
      found: found.message,
      remedy: {
        message: `Inspect on: ${FEWEST_TO_CHART - found.samples.length} more samples of this chart.`,
      },
    })
  if ('message' in found)
    return judged({ verdict: 'not applicable', found: `no chart yet. ${found.message}` })
  const [first] = open
  if (!first)
    return judged({
      verdict: 'meets',
      measured: { samples: count(found.samples.length), signals: count(signals.length) },
      found: `${found.samples.length} samples, ${signals.length === 0 ? 'no signal' : `${inNumber(signals.length)}, answered`}.`,
    })
  return judged({
    verdict: 'fails',
    measured: {
      unanswered: count(open.length),
      signals: count(signals.length),
      first: first.chartRule,
      at: first.sample,
    },
    found: `${open.length} of ${inNumber(signals.length)} unanswered, the first at ${first.sample}: ${first.message}.`,
    remedy: {
      message: `Answer the signal at ${first.sample} (${first.message}): what changed then, and what was done about it and about the assemblies made meanwhile.`,
    },
  })
}
