import { TIP_GROUND_BY_EDITION, tipGroundMax, tipLeakageMax } from '@/shared/plan/limits/control-hand'
import { tipAccuracyEdition } from '@/shared/plan/parameters/control-hand'
import { dateOf } from '@/shared/quantity/calendar'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { checkDoubt } from '@/shared/irons/check-doubt'
import { tipGround as characteristic } from '@/shared/records/characteristics/tip-ground'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { rowsByText } from '@/shared/logs/readings-by-text'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { logsOf } from '@/shared/rules/record-source'
import { decidingPart, tightest } from '@/shared/rules/parts'
import { tipCheckGuard } from '@/shared/plan/limits/guard-bands'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { governingUnder } from '@/shared/plan/edition-requirement'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { measure } from '@/shared/rules/measure'

const CAUTIONS = [
  'Irons run from the mains: their protective earth and insulation are tested by people competent for it under the local electrical code; take an iron that fails out of use at once.',
]

export const tipGroundRule = rule({
  id: 'tip-ground',
  title: 'Irons: ground and leakage',
  why: 'A tip that floats or leaks destroys sensitive parts and can hurt the person who holds it.',
  formula: 'resistance to ground and leakage of each iron ≤ most',
  stage: 'control',
  version: 2,
  reads: {
    edition: optional(tipAccuracyEdition),
    groundMax: tipGroundMax,
    leakageMax: tipLeakageMax,
    guard: tipCheckGuard,
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
    }
    const parts = logs.flatMap((log) =>
      [...rowsByText(log, 'iron')].map(([iron, rows]) => ironPart(log, iron, rows[rows.length - 1], asked)),
    )
    if (parts.length === 0)
      return undetermined(
        'No ground check is recorded yet. Record one for each iron in a log of soldering iron ground and leakage.',
        ['a ground check of each iron'],
        limit,
      )
    const worst = decidingPart(parts)!
    const { verdict } = worst
    return {
      verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      margin: worst.margin,
      working: [],
      sources: distinctSources([ground, leakageMax, rest.guard].map(sourceOf)),
      remedy: worst.remedy,
      missing:
        verdict === 'undetermined'
          ? parts.filter((part) => part.verdict === verdict).map((part) => `${part.subject}: ${part.found}`)
          : undefined,
      parts,
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
}

/** The newest check of one iron: its way to ground, what leaks to its tip, and what it was read with. */
function ironPart(log: Log, iron: string, row: number | undefined, asked: Asked): Part {
  const { groundOhm, leakageMv, guardShare, file } = asked
  const named = { subject: `Iron ${iron}`, about: { log: log.code, iron } }
  const found = cellAt(log, 'resistanceOhm', row)
  const at = cellAt(log, 'at', row)
  if (!Number.isFinite(found) || !Number.isFinite(at))
    return { ...named, verdict: 'undetermined', found: 'its newest check has no resistance.' }
  const on = dateOf(at)
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
