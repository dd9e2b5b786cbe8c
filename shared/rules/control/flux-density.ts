import {
  USUAL_REFERENCE_C,
  USUAL_COEFFICIENT,
  USUAL_THINNER_G_PER_ML,
  densitySeries,
} from '@/shared/logs/flux-density-series'
import { additionPerLitre, exchangePerLitre } from '@/shared/physics/flux-density'
import { densityControlSolidsMin } from '@/shared/plan/limits/control-flux'
import {
  fluxControlMethod,
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
  fluxSolids,
  fluxTankVolume,
  thinnerDensity,
} from '@/shared/plan/parameters/control-flux'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { fluxDensity as characteristic } from '@/shared/records/characteristics/flux-density'
import { cellAt, type LogSeries } from '@/shared/logs/log-series'
import { undetermined, type Judged, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { windowAround, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow } from '@/shared/logs/judge-logged-window'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { fluxDensityInterval } from '@/shared/plan/limits/control-intervals'
import { measure } from '@/shared/rules/measure'

const CAUTIONS = [
  'Flux thinner is highly flammable (isopropyl alcohol flashes at about 12 °C) and its vapour travels: no flame, spark or hot solder near, heaters off, good extraction. The safety data sheet and local fire codes rule.',
  'Flux takes up water from the air: that raises its density and hides lost strength. Renew it when its age or clarity says so, whatever the density.',
]

export const fluxDensityRule = rule({
  id: 'flux-density',
  title: 'Flux density, corrected for temperature',
  why: 'Thinner evaporates and the flux thickens: too much stays on the board, or too little reaches it. Density tells, if it is brought to one temperature and the flux holds enough solids.',
  formula:
    'ρ(read) + k · (T − T_ref) within target ± tolerance; a reading before each run within the interval',
  stage: 'control',
  version: 3,
  reads: {
    method: fluxControlMethod,
    solids: optional(fluxSolids),
    target: optional(fluxDensityTarget),
    tolerance: optional(fluxDensityTolerance),
    reference: optional(fluxReferenceTemperature),
    coefficient: optional(fluxDensityCoefficient),
    thinner: optional(thinnerDensity),
    tank: optional(fluxTankVolume),
    solidsMin: densityControlSolidsMin,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: fluxDensityInterval,
    guard: processWindowGuard,
  },
  judge({ method, solids, target, tolerance, solidsMin, logs, answers, instruments, ...rest }): Judged {
    if (method !== 'density') return notApplicable('The flux is not controlled by density.')
    const missing = [
      ...(solids === undefined ? [fluxSolids.label] : []),
      ...(target === undefined ? [fluxDensityTarget.label] : []),
      ...(tolerance === undefined ? [fluxDensityTolerance.label] : []),
    ]
    if (solids === undefined || target === undefined || tolerance === undefined)
      return undetermined(`Cannot be judged without: ${missing.join('; ')}.`, missing)
    if (!(solids >= solidsMin.value)) return refusal(solids, solidsMin.value, sourceOf(solidsMin))

    const referenceC = rest.reference ?? USUAL_REFERENCE_C
    const coefficient = rest.coefficient ?? USUAL_COEFFICIENT
    const thinner = rest.thinner ?? USUAL_THINNER_G_PER_ML
    const window = guarded(windowAround(target, tolerance, 'g/ml', 'specified density'), rest.guard)
    const series = logs.map((log) => densitySeries(log, referenceC, coefficient))
    const judged = judgeLoggedWindow({
      what: `Flux density at ${formatQuantity(referenceC, '°C')}`,
      series,
      window,
      answers,
      instruments: { instruments, calibrations: rest.calibrations },
      mend: (newest) => correction(newest, target, thinner, rest.tank),
      recordIn: 'a log of flux density',
      work: { ...MACHINE_WORK, runs: rest.runs, interval: rest.interval },
    })
    return {
      ...judged,
      measured: { reference: measure(referenceC, '°C') },
      working: series.flatMap((one) => workingOf(one, referenceC, coefficient, target, thinner)),
      sources: [
        {
          cite: 'Balance of masses, volumes taken as additive; linear thermal expansion',
          how: 'computed',
        },
        sourceOf(solidsMin),
        sourceOf(rest.interval),
      ],
      notes: [...(judged.notes ?? []), ...assumed(rest)],
      cautions: CAUTIONS,
    }
  },
})

const refusal = (solids: number, min: number, source: Judged['sources'][number]): Judged => ({
  verdict: 'fails',
  found: `The flux holds ${formatQuantity(solids, '%')} solids: its density can tell nothing of its strength.`,
  limit: `Control by density asks for at least ${formatQuantity(min, '%')} solids (${source.cite}).`,
  measured: { refused: 'solids' },
  margin: { found: solids, limit: min, unit: '%', direction: 'at least', guardBand: 0 },
  working: [],
  sources: [source],
  remedy: { message: 'Control this flux by its acid number, or use it fresh from a sealed supply.' },
  cautions: CAUTIONS,
})

/** What brings the flux back to its target, in litres where the tank's content is known. */
function correction(
  foundGPerMl: number,
  target: number,
  thinner: number,
  tankL: number | undefined,
): string | undefined {
  if (foundGPerMl < target)
    return 'The flux is too thin: let no thinner in; add fresh flux from a sealed can, or renew the tank, and read again.'
  if (!(thinner < target))
    return 'The thinner is no lighter than the specified flux: check the densities entered.'
  const densities = { foundGPerMl, targetGPerMl: target, addedGPerMl: thinner }
  const added = additionPerLitre(densities)
  const exchanged = exchangePerLitre(densities)
  const perLitre = `Add ${formatNumber(added, 3)} l of thinner to each litre`
  const inTank =
    tankL === undefined
      ? ''
      : ` (${formatNumber(added * tankL, 3)} l to the ${formatNumber(tankL)} l in the tank)`
  const orExchange =
    tankL === undefined
      ? `${formatNumber(exchanged * 100, 3)} % of the flux`
      : `${formatNumber(exchanged * tankL, 3)} l`
  return `${perLitre}${inTank}, or at full tank exchange ${orExchange} for thinner; stir, let the temperature settle and read again.`
}

function workingOf(
  { log, values, rows }: LogSeries,
  referenceC: number,
  coefficient: number,
  target: number,
  thinner: number,
): WorkingLine[] {
  const at = values.length - 1
  const newest = values[at]
  if (newest === undefined) return []
  const read = cellAt(log, 'densityGPerMl', rows[at])
  const temperatureC = cellAt(log, 'temperatureC', rows[at])
  const lines: WorkingLine[] = [
    {
      label: `Log ${log.code}: density at the reference temperature`,
      formula: 'ρ(ref) = ρ(read) + k · (T − T(ref))',
      numbers: `${read} + ${coefficient} · (${temperatureC} − ${referenceC})`,
      result: formatQuantity(newest, 'g/ml', 5),
    },
  ]
  if (newest > target && thinner < target)
    lines.push({
      label: `Log ${log.code}: thinner to add to each litre`,
      formula: 'x = (ρ − ρ(target)) / (ρ(target) − ρ(thinner))',
      numbers: `(${formatNumber(newest, 5)} − ${target}) / (${target} − ${thinner})`,
      result: formatQuantity(
        additionPerLitre({ foundGPerMl: newest, targetGPerMl: target, addedGPerMl: thinner }),
        'l',
        4,
      ),
    })
  return lines
}

function assumed({
  reference,
  coefficient,
  thinner,
}: {
  reference?: number
  coefficient?: number
  thinner?: number
}): string[] {
  return [
    ...(reference === undefined ? [`Reference temperature taken as ${USUAL_REFERENCE_C} °C.`] : []),
    ...(coefficient === undefined
      ? [
          `Change with temperature taken as ${USUAL_COEFFICIENT} g/ml per K (common practice, no published source).`,
        ]
      : []),
    ...(thinner === undefined
      ? [`Thinner taken as isopropyl alcohol, ${USUAL_THINNER_G_PER_ML} g/ml at 25 °C (from memory).`]
      : []),
  ]
}
