import type { BathEdition } from '@/shared/materials/bath-contaminants'
import { NEW_SOLDER_MAX } from '@/shared/materials/bath-constituents'
import { bathTinTolerance } from '@/shared/plan/limits/control-bath'
import { bathMass } from '@/shared/plan/parameters/control-bath'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import { bathComposition as characteristic } from '@/shared/records/characteristics/bath-composition'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { exchangeInWords, exchangeWorking, sumWorking } from '@/shared/baths/bath-exchange-words'
import { bathLimitReads, bathQuestions, chosenEdition, newCopperRead } from '@/shared/baths/bath-limits'
import type { BathQuestion } from '@/shared/baths/bath-questions'
import { tinPart } from '@/shared/baths/bath-tin'
import { windowInWords } from '@/shared/logs/logged-window'
import { judgeSeries } from '@/shared/logs/judge-logged-window'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { HOT_SOLDER_CAUTIONS, keepsBath } from '@/shared/plan/soldering-baths'

const CAUTIONS = [
  ...HOT_SOLDER_CAUTIONS,
  'Leaded dross and solder taken out are hazardous waste: to a licensed recycler, never back into the bath.',
]

export const bathCompositionRule = rule({
  id: 'bath-composition',
  title: 'Solder bath contamination',
  why: 'Every board dissolves copper, gold and finish into the bath. Past a limit the joints turn gritty, brittle or dull, and each metal may pass while their sum does not.',
  formula: 'each metal, and the sum of five, ≤ most of the edition; tin within ± of nominal',
  stage: 'control',
  version: 3,
  reads: {
    ...bathLimitReads,
    ...newCopperRead,
    process: optional(solderingProcess),
    massKg: optional(bathMass),
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    tinTolerance: bathTinTolerance,
  },
  judge(inputs): Judged {
    const { family, process, alloy, edition, logs, answers, instruments, massKg } = inputs
    if (!keepsBath(process)) return notApplicable('No solder bath is kept in this programme.')
    const limits = chosenEdition(inputs)
    if (limits && limits.family !== family)
      return {
        verdict: 'fails',
        measured: { editionFamily: limits.family, family },
        found: `The edition chosen is for a ${limits.family} bath; the programme solders ${family}.`,
        limit: 'The contamination limits must be those of the alloy family.',
        working: [],
        sources: [limits.source],
        remedy: { message: `Choose an edition for a ${family} bath, or leave the choice to the strictest.` },
      }
    if (logs.length === 0 || logs.every(({ readings }) => readings.count === 0))
      return undetermined(
        'No bath analysis is recorded yet. Record one in a log of solder bath composition.',
        ['a bath analysis'],
      )

    const instrumentFile = { instruments, calibrations: inputs.calibrations }

    const questions = bathQuestions(inputs, logs)
    const judgedOf = (question: BathQuestion): Part => {
      const { series, window, subject, about } = question
      if (series.values.length === 0) return notAnalysed(question)
      const mend = (newest: number): string => exchangeInWords(newest, question, massKg)
      return judgeSeries(series, { window, answers, instruments: instrumentFile, mend }, { subject, about })
    }
    const tinParts =
      alloy && family === 'tin-lead'
        ? logs.flatMap((log) => tinPart(log, alloy, inputs.tinTolerance, inputs.guard, massKg) ?? [])
        : []
    const parts = [...questions.map(judgedOf), ...tinParts]
    const asked = questions[parts.indexOf(worstPart(parts))]
    return {
      ...spokenByWorst(parts),
      limit: asked ? windowInWords(asked.window) : 'The tin must lie near its nominal.',
      working: [
        ...sumWorking(questions),
        ...questions.flatMap((question) => exchangeWorking(question, massKg)),
      ],
      sources: distinctSources([
        ...questions.map(({ governing }) => sourceOf(governing)),
        NEW_SOLDER_MAX.source,
      ]),
      notes: notes(family, edition, inputs.newCopper),
      cautions: CAUTIONS,
    }
  },
})

const notAnalysed = ({ subject, about, window }: BathQuestion): Part => ({
  subject,
  about,
  verdict: 'undetermined',
  found: `never analysed; the limit is ${formatQuantity(window.max?.value ?? Number.NaN, '%')}.`,
  remedy: { message: 'Ask the laboratory for it: an empty cell is not a zero.' },
})

function notes(
  family: string,
  edition: BathEdition | 'strictest' | undefined,
  newCopper: number | undefined,
): string[] {
  return [
    ...(edition === undefined || edition === 'strictest'
      ? ['Limits: the strictest of the assembly editions (they disagree on aluminium, 0.006 or 0.008 %).']
      : []),
    ...(newCopper === undefined && family === 'lead-free'
      ? [
          'Copper in the solder added is taken as 0.08 %; lead-free alloys may hold 0.5 % and more on purpose: enter it.',
        ]
      : []),
    family === 'tin-lead'
      ? 'Cooling the still bath to 188 °C for 8 h and skimming takes copper out of tin-lead (J-STD-001C / DOD-STD-2000A table notes).'
      : 'Cooling and skimming does not work here: in high-tin baths the copper compound sinks (from memory).',
  ]
}
