import { TIP_GROUND_BY_EDITION, tipGroundMost, tipLeakageMost } from '@/shared/plan/limits/control-hand'
import { tipAccuracyEdition } from '@/shared/plan/parameters/control-hand'
import { dateOf } from '@/shared/quantity/calendar'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import { calibrationStanding, type InstrumentFile } from '@/shared/instruments/calibration-status'
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
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { rulingUnder } from '@/shared/plan/edition-ruling'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'

const CAUTIONS = [
  'Irons run from the mains: their protective earth and insulation are tested by people competent for it under the local electrical code; take an iron that fails out of use at once.',
]

export const tipGroundRule = rule({
  id: 'tip-ground',
  title: 'Irons: ground and leakage',
  why: 'A tip that floats or leaks destroys sensitive parts and can hurt the person who holds it.',
  stage: 'control',
  version: 1,
  reads: {
    edition: optional(tipAccuracyEdition),
    groundMost: tipGroundMost,
    leakageMost: tipLeakageMost,
    logs: logsOf(characteristic),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge({ edition, groundMost, leakageMost, logs, instruments, ...rest }): Judged {
    const ground =
      edition === undefined || edition === 'strictest'
        ? groundMost
        : rulingUnder(groundMost, { ...TIP_GROUND_BY_EDITION[edition], authority: 'standard' })
    const limit = `At most ${formatQuantity(ground.value, 'Ω')} to ground (${namedRuling(ground)}) and ${formatQuantity(leakageMost.value, 'mV')} at the tip (${namedRuling(leakageMost)}).`
    const file = { instruments, calibrations: rest.calibrations }
    const parts = logs.flatMap((log) =>
      [...rowsByText(log, 'iron')].map(([iron, rows]) =>
        ironPart(log, iron, rows[rows.length - 1], ground.value, leakageMost.value, file),
      ),
    )
    if (parts.length === 0)
      return undetermined(
        'No ground check is recorded yet. Record one for each iron in a log of soldering iron ground and leakage.',
        ['a ground check of each iron'],
        limit,
      )
    const verdict = worstVerdict(parts.map((part) => part.verdict))
    const worst = parts.find((part) => part.verdict === verdict)!
    return {
      verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      margin: worst.margin,
      working: [],
      sources: distinctSources([sourceOf(ground), sourceOf(leakageMost)]),
      remedy: worst.remedy,
      missing:
        verdict === 'undetermined'
          ? [`a ground check by an instrument in calibration (${worst.subject})`]
          : undefined,
      parts,
      notes: [
        'Editions differ between 2 and 5 Ω and on whether the tip is hot: each check says which it was.',
      ],
      cautions: CAUTIONS,
    }
  },
})

function ironPart(
  log: Log,
  iron: string,
  row: number | undefined,
  groundOhm: number,
  leakageMv: number,
  file: InstrumentFile,
): Part {
  const subject = `Iron ${iron}`
  const found = cellAt(log, 'resistanceOhm', row)
  const at = cellAt(log, 'at', row)
  if (!Number.isFinite(found) || !Number.isFinite(at))
    return { subject, verdict: 'undetermined', found: 'its newest check has no resistance.' }
  const on = dateOf(at)
  const margin: Margin = {
    found,
    limit: groundOhm,
    unit: 'Ω',
    direction: 'at most',
    guardBand: groundOhm / 10,
  }
  const outOfUse = {
    says: `Take iron ${iron} out of use; clean the tip seat, mend the ground, and check it again.`,
  }
  const hotOrCold = log.readings.columns['tip']?.[row ?? -1]
  const says = `${formatAgainst(found, groundOhm, 'Ω').found} to ground on ${on}, tip ${typeof hotOrCold === 'string' ? hotOrCold : 'state not said'}`
  if (verdictOn(margin) === 'fails')
    return { subject, verdict: 'fails', found: `${says}.`, margin, remedy: outOfUse }
  const leak = cellAt(log, 'leakageMv', row)
  if (Number.isFinite(leak) && !(leak <= leakageMv))
    return {
      subject,
      verdict: 'fails',
      found: `${formatQuantity(leak, 'mV')} leak to the tip on ${on}.`,
      margin: { found: leak, limit: leakageMv, unit: 'mV', direction: 'at most', guardBand: leakageMv / 10 },
      remedy: outOfUse,
    }
  const standing = log.instrumentId === null ? undefined : calibrationStanding(log.instrumentId, on, file)
  if (standing && !standing.stands)
    return { subject, verdict: 'undetermined', found: `${says} proves nothing: ${standing.says}.`, margin }
  return { subject, verdict: verdictOn(margin), found: `${says}.`, margin }
}
