import { LAMINATES } from '@/shared/materials/laminates'
import { limitedLaminateYearsMax } from '@/shared/plan/limits/laminate'
import { laminate } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { rule } from '@/shared/rules/rule'
import { measure, count } from '@/shared/rules/measure'

export const laminatePlatedHoles = rule({
  id: 'laminate-plated-holes',
  title: 'Laminate that carries plated holes',
  why: 'The barrel of a plated hole follows the laminate through its thickness at every soldering; a paper laminate stretches and gases too much for it.',
  formula: 'grade carries plated holes, or does for a service ≤ most',
  stage: 'specification',
  version: 1,
  reads: { laminate, holes: leadHoles, serviceYears, short: limitedLaminateYearsMax },
  judge({ laminate: key, holes, serviceYears: years, short }) {
    const { label, platedHoles, source } = LAMINATES[key]
    const plated = holes.filter((row) => row.plated).reduce((sum, row) => sum + row.joints, 0)
    const common = {
      measured: {
        laminate: key,
        carriesPlatedHoles: platedHoles,
        joints: count(plated, 'joints'),
        service: measure(years, 'years'),
      },
      limit: 'Plated holes only in a laminate that carries them over the service life',
      working: [
        { label: 'Joints in plated holes', result: formatQuantity(plated, 'joints') },
        { label: 'The grade carries plated holes', result: platedHoles },
      ],
      sources: [source],
    }
    if (plated === 0) return notApplicable('No hole is plated.')
    if (platedHoles === 'yes') return { verdict: 'meets', found: `${label} carries plated holes.`, ...common }
    const remedy = { message: 'Choose woven glass and epoxy, or design the board without plated holes.' }
    if (platedHoles === 'no') {
      return {
        verdict: 'fails',
        found: `${label} does not carry plated holes; ${formatQuantity(plated, 'joints')} need them.`,
        remedy,
        ...common,
      }
    }
    // Inside a short life it is only just good for it, never more.
    const margin = {
      found: years,
      limit: short.value,
      unit: 'years',
      direction: 'at most',
      guardBand: short.value,
    } as const
    return {
      verdict: verdictOn(margin),
      margin,
      found: `${label} carries plated holes, but not for a long life; the service is ${formatQuantity(years, 'years')}, at most ${formatQuantity(short.value, 'years')} (${short.document}).`,
      remedy,
      ...common,
      sources: [source, short.limit.byDefault.from],
    }
  },
})
