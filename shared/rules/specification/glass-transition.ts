import { LAMINATES } from '@/shared/materials/laminates'
import { commonPractice, published } from '@/shared/sources/provenance'
import { glassTransitionMarginMin } from '@/shared/plan/limits/laminate'
import { glassTransitionGuard } from '@/shared/plan/limits/specification-guards'
import { glassTransition, laminate, serviceTemperature } from '@/shared/plan/parameters/laminate'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { tightest } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'

export const glassTransitionRule = rule({
  id: 'glass-transition',
  title: 'Laminate at its service temperature',
  why: 'Above the glass transition the laminate grows four to five times as fast through its thickness and pulls at every barrel; it is never worked or tested there.',
  formula: 'T_g − service ≥ least, and service ≤ use temperature of the grade',
  stage: 'specification',
  version: 1,
  reads: {
    laminate,
    service: serviceTemperature,
    certified: optional(glassTransition),
    min: glassTransitionMarginMin,
    guard: glassTransitionGuard,
  },
  judge({ laminate: key, service, certified, min, guard }) {
    const grade = LAMINATES[key]
    const transitionC = certified ?? grade.glassTransitionC
    const fromTransition = {
      found: transitionC - service,
      limit: min.value,
      unit: 'K',
      direction: 'at least',
      guardBand: guard.value,
    } as const
    const fromGrade = {
      found: service,
      limit: grade.maxOperatingC,
      unit: '°C',
      direction: 'at most',
      guardBand: guard.value,
    } as const
    const margin = tightest(fromTransition, fromGrade)
    const coolestC = Math.min(transitionC - min.value, grade.maxOperatingC) - guard.value
    const verdict = worstVerdict([verdictOn(fromTransition), verdictOn(fromGrade)])
    return {
      verdict,
      found: `${grade.label} softens at ${formatQuantity(transitionC, '°C')}${certified === undefined ? ' (table value)' : ' (certified)'} and may work up to ${formatQuantity(grade.maxOperatingC, '°C')}; service reaches ${formatQuantity(service, '°C')}.`,
      limit: `At least ${formatQuantity(min.value, 'K')} below the glass transition (${min.document}), and at most ${formatQuantity(grade.maxOperatingC, '°C')} for the grade`,
      margin,
      measured: {
        laminate: key,
        transition: measure(transitionC, '°C'),
        certified: certified !== undefined,
        hottestUse: measure(grade.maxOperatingC, '°C'),
        service: measure(service, '°C'),
      },
      working: [
        {
          label: 'Room to the glass transition',
          formula: 'T_g − service',
          numbers: `${formatQuantity(transitionC, '°C')} − ${formatQuantity(service, '°C')}`,
          result: formatQuantity(transitionC - service, 'K'),
        },
      ],
      sources: [
        grade.source,
        published(
          'Never above the glass transition in use or test (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
        ),
        commonPractice('Use temperatures of grades are defined in different ways; the lowest is taken'),
      ],
      ...(verdict !== 'meets' && {
        remedy: {
          message: `Choose a laminate with a higher glass transition, or keep the board at ${formatQuantity(coolestC, '°C')} or below.`,
          parameter: serviceTemperature.key,
          value: coolestC,
        },
      }),
    }
  },
})
