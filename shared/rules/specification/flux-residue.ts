import { FLUXES } from '@/shared/materials/fluxes'
import { insulationWithResidueMax } from '@/shared/plan/limits/solder'
import { insulationWithResidueGuard } from '@/shared/plan/limits/specification-guards'
import { flux, fluxResidue, insulationNeeded } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, worstVerdict, type Judged, type Verdict } from '@/shared/rules/finding'
import { optional, rule } from '@/shared/rules/rule'

export const fluxResidueRule = rule({
  id: 'flux-residue',
  title: 'Flux residue',
  why: 'What flux leaves behind takes up damp, leaks between conductors and eats them; some residues may stay, others must go, and sensitive circuits bear none.',
  formula:
    'residue removed; or a flux whose residue may stay, and insulation needed ≤ what may be counted on with it',
  stage: 'specification',
  version: 2,
  reads: {
    flux,
    residue: fluxResidue,
    needed: optional(insulationNeeded),
    max: insulationWithResidueMax,
    guard: insulationWithResidueGuard,
  },
  judge({ flux: key, residue, needed, max, guard }) {
    const { label, residueMayStay, source } = FLUXES[key]
    const common = {
      measured: { flux: key, residue },
      limit: `Residue stays only of fluxes that allow it, and where the circuit needs at most ${formatQuantity(max.value, 'MΩ')} (${max.document})`,
      sources: [source, max.limit.byDefault.from],
      notes: [
        'L0 and L1 changed their halide limits between editions: ask by which edition the flux was classified.',
        'Insulation figures of 85 °C/85 % and of 40 °C/90 % tests are not interchangeable.',
      ],
    }
    if (residue === 'removed') return whereRemoved(label, common)
    const byFlux: Verdict =
      residueMayStay === 'yes' ? 'meets' : residueMayStay === 'no' ? 'fails' : 'marginal'
    if (needed === undefined)
      return byFlux === 'fails'
        ? whereItStays(label, byFlux, common)
        : {
            ...undetermined(
              `${label}; its residue stays, and what insulation the circuit needs is not specified.`,
              [insulationNeeded.label],
            ),
            ...common,
          }
    const margin = {
      found: needed,
      limit: max.value,
      unit: 'MΩ',
      direction: 'at most',
      guardBand: (guard.value / 100) * max.value,
    } as const
    const byCircuit = verdictOn(margin)
    return {
      ...whereItStays(label, worstVerdict([byFlux, byCircuit]), common),
      found: `${label}; its residue stays, and the circuit needs ${formatQuantity(needed, 'MΩ')}.`,
      margin,
    }
  },
})

type Common = Pick<Judged, 'measured' | 'limit' | 'sources' | 'notes'>

const whereRemoved = (label: string, common: Common): Judged => ({
  verdict: 'meets',
  found: `${label}; its residue is removed, which the assessment has to show.`,
  working: [],
  cautions: [
    'Solvents and thinners burn and harm: ventilate, keep flames and switches away, dispose under local rules.',
  ],
  ...common,
})

const whereItStays = (label: string, verdict: Verdict, common: Common): Judged => ({
  verdict,
  found: `${label}; its residue stays.`,
  working: [],
  ...(verdict !== 'meets' && {
    remedy: {
      message: 'Have the residue removed, or choose a flux of low activity and show the insulation by test.',
    },
  }),
  ...common,
})
