import { ALLOYS, type Alloy } from '@/shared/materials/alloys'
import { published } from '@/shared/sources/provenance'
import { solidusMarginMin } from '@/shared/plan/limits/solder'
import { solidusGuard } from '@/shared/plan/limits/specification-guards'
import { serviceTemperature } from '@/shared/plan/parameters/laminate'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { rule } from '@/shared/rules/rule'

const KELVIN = 273.15

export const creepMargin = rule({
  id: 'creep-margin',
  title: 'Service temperature against the solidus',
  why: 'Solder works near its melting point and creeps at any service temperature; the nearer the solidus, the sooner a loaded joint lets go.',
  formula: 'solidus − service ≥ least',
  stage: 'specification',
  version: 1,
  reads: { alloy: solderAlloy, service: serviceTemperature, min: solidusMarginMin, guard: solidusGuard },
  judge({ alloy: key, service, min, guard }) {
    const alloy: Alloy = ALLOYS[key]
    const margin = {
      found: alloy.solidusC - service,
      limit: min.value,
      unit: 'K',
      direction: 'at least',
      guardBand: guard.value,
    } as const
    const homologous = (service + KELVIN) / (alloy.solidusC + KELVIN)
    const verdict = verdictOn(margin)
    const coolestC = alloy.solidusC - min.value - guard.value
    return {
      verdict,
      found: `${alloy.label} begins to melt at ${formatQuantity(alloy.solidusC, '°C')}; service reaches ${formatQuantity(service, '°C')}, ${formatQuantity(homologous * 100, '%', 3)} of that in kelvin.`,
      limit: `At least ${formatQuantity(min.value, 'K')} below the solidus (${min.document})`,
      margin,
      measured: {
        alloy: key,
        solidus: measure(alloy.solidusC, '°C'),
        service: measure(service, '°C'),
      },
      working: [
        {
          label: 'Room to the solidus',
          formula: 'solidus − service',
          numbers: `${formatQuantity(alloy.solidusC, '°C')} − ${formatQuantity(service, '°C')}`,
          result: formatQuantity(alloy.solidusC - service, 'K'),
        },
        {
          label: 'Share of the melting point',
          formula: '(service + 273.15 K)/(solidus + 273.15 K)',
          result: formatQuantity(homologous, '1', 3),
        },
      ],
      sources: [
        alloy.source,
        min.limit.byDefault.from,
        published(
          'Solder joints carry no static load (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
        ),
      ],
      ...(verdict !== 'meets' && {
        remedy: {
          message: `Choose an alloy with a higher solidus, or keep the board at ${formatQuantity(coolestC, '°C')} or below.`,
          parameter: serviceTemperature.key,
          value: coolestC,
        },
      }),
      notes: [
        'Above half the melting point in kelvin, solder creeps: hold components by their bodies, not by their joints (above 7 g in all or 3.5 g a lead, NASA workmanship).',
        ...(alloy.note ? [alloy.note] : []),
      ],
    }
  },
})
