import { TIP_GROUND_BY_EDITION, tipGroundMax, tipLeakageMax } from '@/shared/plan/limits/control-hand'
import { tipAccuracyEdition } from '@/shared/plan/parameters/control-hand'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { checkDoubt } from '@/shared/irons/check-doubt'
import { daysOnBadChecks, type CheckedIron } from '@/shared/irons/days-on-bad-checks'
import { OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/logs/signal-answers'
import { foldedList } from '@/shared/quantity/folded-names'
import { daysOfHandWork } from '@/shared/records/soldering-work'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { tipGround as characteristic } from '@/shared/records/characteristics/tip-ground'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { ofEveryIron } from '@/shared/irons/of-every-iron'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { logsOf } from '@/shared/rules/record-source'
import { tightest } from '@/shared/rules/parts'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { tipCheckGuard } from '@/shared/plan/limits/guard-bands'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { governingUnder } from '@/shared/plan/edition-requirement'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { measure } from '@/shared/rules/measure'
import { dayOf } from '@/shared/logs/log-day'

const CAUTIONS = [
  'Irons run from the mains: their protective earth and insulation are tested by people competent for it under the local electrical code; take an iron that fails out of use at once.',
]

export const tipGroundRule = rule({
  id: 'tip-ground',
  title: 'Irons: ground and leakage',
  why: 'A tip that floats or leaks destroys sensitive parts and can hurt the person who holds it.',
  formula: 'resistance to ground and leakage of each iron ≤ most; no work on an iron whose check lay outside',
  stage: 'control',
  version: 3,
  reads: {
    edition: optional(tipAccuracyEdition),
    groundMax: tipGroundMax,
    leakageMax: tipLeakageMax,
    guard: tipCheckGuard,
    answers: signalAnswers,
    runs: solderingRuns,
    logs: logsOf(characteristic),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge({ edition, groundMax, leakageMax, logs, instruments, ...rest }): Judged {
    const ground =
      edition === undefined || edition === 'strictest'
        ? groundMax
        : governingUnder(groundMax, { ...TIP_GROUND_BY_EDITION[edition], authority: 'standard' })
    const limit = `At most ${formatQuantity(ground.value, 'Ω')} to ground (${governingName(ground)}) and ${formatQuantity(leakageMax.value, 'mV')} at the tip (${governingName(leakageMax)}).`
    const asked: Asked = {
      groundOhm: ground.value,
      leakageMv: leakageMax.value,
      guardShare: rest.guard.value / 100,
      file: { instruments, calibrations: rest.calibrations },
      answers: rest.answers,
      days: daysOfHandWork(rest.runs),
    }
    const parts = ofEveryIron(logs, (log, iron, rows) => ironPart(log, iron, rows, asked))
    if (parts.length === 0)
      return undetermined(
        'No ground check is recorded yet. Record one for each iron in a log of soldering iron ground and leakage.',
        ['a ground check of each iron'],
        limit,
      )
    return {
      ...spokenByWorst(parts),
      limit,
      working: [],
      sources: distinctSources([ground, leakageMax, rest.guard].map(sourceOf)),
      notes: [
        'Editions differ between 2 and 5 Ω and on whether the tip is hot: each check says which it was.',
      ],
      cautions: CAUTIONS,
    }
  },
})

interface Asked {
  readonly groundOhm: number
  readonly leakageMv: number
  readonly guardShare: number
  readonly file: InstrumentFile
  readonly answers: readonly SignalAnswer[]
  /** On which work was done by hand, ascending. */
  readonly days: readonly string[]
}

/** The newest check of one iron: its way to ground, what leaks to its tip, and what it was read with. */
function ironPart(log: Log, iron: string, rows: readonly number[], asked: Asked): Part {
  const row = rows[rows.length - 1]
  const { groundOhm, leakageMv, guardShare, file } = asked
  const named = { subject: `Iron ${iron}`, about: { log: log.code, iron } }
  const found = cellAt(log, 'resistanceOhm', row)
  const at = cellAt(log, 'at', row)
  if (!Number.isFinite(found) || !Number.isFinite(at))
    return { ...named, verdict: 'undetermined', found: 'its newest check has no resistance.' }
  const on = dayOf(log, at)
  const ground: Margin = {
    found,
    limit: groundOhm,
    unit: 'Ω',
    direction: 'at most',
    guardBand: guardShare * groundOhm,
  }
  const outOfUse = {
    message: `Take iron ${iron} out of use; clean the tip seat, mend the ground, and check it again.`,
  }
  const hotOrCold = log.readings.columns['tip']?.[row ?? -1]
  const message = `${formatAgainst(found, groundOhm, 'Ω').found} to ground on ${on}, tip ${typeof hotOrCold === 'string' ? hotOrCold : 'state not said'}`
  const measured = { toGround: measure(found, 'Ω'), on, tip: typeof hotOrCold === 'string' ? hotOrCold : '' }
  if (verdictOn(ground) === 'fails')
    return { ...named, measured, verdict: 'fails', found: `${message}.`, margin: ground, remedy: outOfUse }
  const leak = cellAt(log, 'leakageMv', row)
  const leakage: Margin = {
    found: leak,
    limit: leakageMv,
    unit: 'mV',
    direction: 'at most',
    guardBand: guardShare * leakageMv,
  }
  if (verdictOn(leakage) === 'fails')
    return {
      ...named,
      measured,
      verdict: 'fails',
      found: `${formatAgainst(leak, leakageMv, 'mV').found} leak to the tip on ${on}.`,
      margin: leakage,
      remedy: outOfUse,
    }
  const badDays = daysOnBadChecks(log, checksOf(log, rows, asked), asked)
  if (badDays.length > 0)
    return {
      ...named,
      measured: { ...measured, workedOn: badDays },
      verdict: 'fails',
      found: `${message}, but work was done on ${foldedList(badDays)} after a check outside.`,
      margin: ground,
      remedy: {
        message: `Answer the check in log ${log.code} (chart rule "${OUTSIDE_WINDOW}"): what was done about iron ${iron}, and what became of the parts soldered with it.`,
      },
    }
  if (!Number.isFinite(leak))
    return {
      ...named,
      measured,
      verdict: 'undetermined',
      found: `${message}; the leakage at its tip was not measured.`,
      margin: ground,
      remedy: { message: `Measure the leakage of iron ${iron} too, and record both.` },
    }
  const margin = tightest(ground, leakage)
  const verdict = worstVerdict([verdictOn(ground), verdictOn(leakage)])
  const doubt = checkDoubt(log, on, verdict, file)
  if (doubt !== undefined)
    return {
      ...named,
      measured,
      verdict: 'undetermined',
      found: `${message} proves nothing: ${doubt}.`,
      margin,
    }
  return { ...named, measured, verdict, found: `${message}.`, margin }
}

/** Each check of the iron, bad where its way to ground or what leaked to its tip lay outside. */
const checksOf = (log: Log, rows: readonly number[], { groundOhm, leakageMv }: Asked): CheckedIron[] =>
  rows.map((row) => {
    const common = { direction: 'at most', guardBand: 0 } as const
    const ground = verdictOn({
      ...common,
      found: cellAt(log, 'resistanceOhm', row),
      limit: groundOhm,
      unit: 'Ω',
    })
    const leakage = verdictOn({
      ...common,
      found: cellAt(log, 'leakageMv', row),
      limit: leakageMv,
      unit: 'mV',
    })
    return { at: cellAt(log, 'at', row), isBad: ground === 'fails' || leakage === 'fails' }
  })
