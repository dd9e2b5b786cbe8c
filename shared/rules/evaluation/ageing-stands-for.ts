import { HUMIDITY_MODELS } from '@/shared/physics/acceleration-factor'
import { ageingMethod, type AgeingMethod } from '@/shared/materials/ageing-methods'
import { published } from '@/shared/sources/provenance'
import {
  GROWTH_ENERGIES,
  STEAM_HAS_NONE,
  ageingEquivalence,
  type AgeingEquivalence,
} from '@/shared/physics/ageing-equivalence'
import { ageingClaims } from '@/shared/plan/parameters/evaluation-ageing'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { boardStorageMonths, leadStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { methodName } from '@/shared/methods/test-methods'
import type { Judged, Part, WorkingLine, Measured } from '@/shared/rules/finding'
import { optional, rule } from '@/shared/rules/rule'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { measure } from '@/shared/rules/measure'

const SOURCES = [
  published('NIST/SEMATECH e-Handbook 8.1.5.1, Arrhenius'),
  published('O. Hallberg and D. S. Peck, Qual. Reliab. Eng. Int. 7 (1991) 169'),
  GROWTH_ENERGIES.source,
]
const LIMIT_SAYS =
  'an ageing that stands for the time in store where that can be computed, and no storage time read out of steam'

/** A store whose humidity nobody specified, for the damp methods alone. */
const ASSUMED_HUMIDITY_PCT = 60

export const ageingStandsFor = rule({
  id: 'ageing-stands-for',
  title: 'What the ageing before the test stands for',
  why: 'A fresh surface nearly always wets. Ageing tries to show the surface as it will be after the store; how many months an hour stands for is known only roughly, and for steam not at all.',
  formula:
    'hours · exp(E/k · (1/T_store − 1/T_ageing)) ≥ months in store, for the least and the greatest published E',
  stage: 'evaluation',
  version: 2,
  reads: {
    conditions: testConditions,
    claims: optional(ageingClaims),
    boardMonths: optional(boardStorageMonths),
    leadMonths: optional(leadStorageMonths),
    storeC: optional(storageTemperature),
  },
  judge(inputs): Judged {
    const { conditions, claims = [], storeC } = inputs
    const wanted = Math.max(inputs.boardMonths ?? 0, inputs.leadMonths ?? 0)
    const parts = [
      ...conditions.map((row) => partOf(row, storeC, wanted)),
      ...claims.map((claim) => claimPart(claim, storeC)),
    ]
    const spoken = spokenByWorst(parts)
    return {
      ...spoken,
      limit: LIMIT_SAYS,
      working: storeC === undefined ? [] : conditions.map((row) => workingOf(row, storeC)),
      sources: SOURCES,
      notes: [
        'The span for dry heat runs over the published energies of growth and holds only while growth of compound is what spoils the surface; oxide and contamination age otherwise.',
        'Constants for damp heat were fitted to aluminium in plastic packages, not to a solderable surface: shown, never judged by.',
        `Damp methods assume a store at ${ASSUMED_HUMIDITY_PCT} % RH.`,
      ],
    }
  },
})

type Row = { readonly method: string; readonly ageing: string }

const equivalenceOf = (ageing: string, storeC: number): AgeingEquivalence => {
  const method = ageingMethod(ageing)
  if (!method) return { kind: 'none', because: 'the ageing is not one of the listed methods' }
  return ageingEquivalence(method, { temperatureC: storeC, relativeHumidityPct: ASSUMED_HUMIDITY_PCT })
}

function partOf({ method, ageing }: Row, storeC: number | undefined, wantedMonths: number): Part {
  const label = ageingMethod(ageing)?.label ?? ageing
  const about = { method, ageing }
  const equivalence = storeC === undefined ? undefined : equivalenceOf(ageing, storeC)
  const common = {
    subject: `${methodName(method)}, ${label}`,
    about,
    measured: {
      ...storeMeasured(storeC),
      ...(equivalence && equivalenceMeasured(equivalence)),
      wanted: measure(wantedMonths, 'months'),
    },
  }
  if (storeC === undefined || equivalence === undefined) {
    const computable = ageingMethod(ageing)?.acts === 'dry heat'
    return computable
      ? { ...common, verdict: 'undetermined', found: 'the temperature of the store is not specified yet.' }
      : { ...common, verdict: 'not applicable', found: 'no storage time is computed for it.' }
  }
  if (equivalence.kind === 'none') {
    return {
      ...common,
      verdict: 'not applicable',
      found: `no storage time is computed: ${equivalence.because}.`,
    }
  }
  const span = spanInWords(equivalence)
  const at = formatQuantity(storeC, '°C')
  if (equivalence.mechanism !== 'growth of compound') {
    return { ...common, verdict: 'not applicable', found: `${span} at ${at}: shown, not judged by.` }
  }
  if (wantedMonths === 0) {
    const found = `${span} at ${at}; how long parts may wait is not specified yet.`
    return { ...common, verdict: 'undetermined', found }
  }
  const wanted = formatQuantity(wantedMonths, 'months')
  if (equivalence.minMonths >= wantedMonths) {
    return {
      ...common,
      verdict: 'meets',
      found: `${span} at ${at}, for ${wanted} in store.`,
    }
  }
  const never = equivalence.maxMonths < wantedMonths
  return {
    ...common,
    verdict: never ? 'fails' : 'marginal',
    found: `${span} at ${at}, while parts may wait ${wanted}${never ? '' : ': the published energies disagree on whether that is enough'}.`,
    remedy: { message: 'Age longer, shorten the storage allowed, or test again after the store.' },
  }
}

function claimPart(
  claim: {
    readonly method: string
    readonly months: number
    readonly claimedBy: string
    readonly document: string
  },
  storeC: number | undefined,
): Part {
  const method = ageingMethod(claim.method)
  const equivalence = storeC === undefined ? undefined : equivalenceOf(claim.method, storeC)
  const common = {
    subject: `claim for ${method?.label ?? claim.method}`,
    about: { claim: claim.method, claimedBy: claim.claimedBy, document: claim.document },
    measured: {
      claimed: measure(claim.months, 'months'),
      ...(equivalence && equivalenceMeasured(equivalence)),
    },
  }
  const message = `${formatQuantity(claim.months, 'months')} claimed by ${claim.claimedBy} (${claim.document})`
  if (method?.acts === 'steam') {
    return {
      ...common,
      verdict: 'marginal',
      found: `${message}; kept as a claim, not used: ${STEAM_HAS_NONE}.`,
    }
  }
  if (equivalence?.kind !== 'span' || equivalence.mechanism !== 'growth of compound') {
    return {
      ...common,
      verdict: 'marginal',
      found: `${message}; kept as a claim: nothing here can confirm it.`,
    }
  }
  const within = claim.months <= equivalence.maxMonths
  return {
    ...common,
    verdict: claim.months <= equivalence.minMonths ? 'meets' : within ? 'marginal' : 'fails',
    found: `${message}; computed: ${spanInWords(equivalence)}.`,
    remedy: within ? undefined : { message: 'Withdraw the claim: no published energy supports it.' },
  }
}

const storeMeasured = (storeC: number | undefined): Measured =>
  storeC === undefined ? {} : { store: measure(storeC, '°C') }

const equivalenceMeasured = (equivalence: AgeingEquivalence): Measured =>
  equivalence.kind === 'none'
    ? { standsFor: equivalence.kind }
    : {
        standsFor: equivalence.mechanism,
        atLeast: measure(equivalence.minMonths, 'months'),
        atMost: measure(equivalence.maxMonths, 'months'),
      }

function spanInWords(equivalence: Extract<AgeingEquivalence, { kind: 'span' }>): string {
  const { minMonths, maxMonths } = equivalence
  const max = maxMonths > 1200 ? 'more than a century' : formatQuantity(maxMonths, 'months', 2)
  return `stands for ${formatNumber(minMonths, 2)} months to ${max} of ${equivalence.mechanism}`
}

function workingOf({ method, ageing }: Row, storeC: number): WorkingLine {
  const aged = ageingMethod(ageing)
  const equivalence = equivalenceOf(ageing, storeC)
  return {
    label: `${methodName(method)}: ${aged?.label ?? ageing}`,
    formula: 'hours · exp((E ÷ k)(1 ÷ T store − 1 ÷ T ageing)); for damp heat also (RH ageing ÷ RH store)ⁿ',
    numbers: numbersOf(aged, equivalence, storeC),
    result: equivalence.kind === 'span' ? spanInWords(equivalence) : equivalence.because,
  }
}

function numbersOf(
  aged: AgeingMethod | undefined,
  equivalence: AgeingEquivalence,
  storeC: number,
): string | undefined {
  if (equivalence.kind === 'none' || aged?.temperatureC === undefined) return undefined
  const temperatures = `${aged.hours} h at ${aged.temperatureC} °C against ${formatNumber(storeC)} °C`
  return equivalence.mechanism === 'growth of compound'
    ? `${temperatures}, E ${GROWTH_ENERGIES.minKjMol} to ${GROWTH_ENERGIES.maxKjMol} kJ/mol`
    : `${temperatures}, ${aged.relativeHumidityPct} against ${ASSUMED_HUMIDITY_PCT} % RH, ${HUMIDITY_MODELS.map(({ label, exponent, activationEnergyEV }) => `${label}: n ${exponent}, E ${activationEnergyEV} eV`).join('; ')}`
}
