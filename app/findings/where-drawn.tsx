import * as to from '@/app/addresses'

/** Where what a rule judges is drawn, beyond the finding's own words. */
const DRAWN: Readonly<Record<string, { readonly text: string; readonly address: (code: string) => string }>> =
  {
    'gauges-capable': { text: 'The gauge studies, drawn', address: to.gaugesAddress },
    'instruments-in-calibration': { text: 'The instruments in use', address: to.gaugesAddress },
    'inspection-state': { text: 'Every supplier’s series, lot by lot', address: to.lotsAddress },
    'board-finish-thickness': {
      text: 'The board finish in its window',
      address: (code) => to.itemAddress(code, 'board-finish'),
    },
    'lead-finish-thickness': {
      text: 'Every lead’s finish in its window',
      address: (code) => to.itemAddress(code, 'lead-finish'),
    },
    'plating-thickness': {
      text: 'The lots’ thickness beside the order',
      address: (code) => to.itemAddress(code, 'board-finish'),
    },
    'reliability-demonstrated': { text: 'Life tests and growth, drawn', address: to.reliabilityAddress },
    'wetting-balance-curves': { text: 'The lots, each with its curves', address: to.lotsAddress },
    'sampling-plan-risk': { text: 'The plan’s operating curve', address: to.samplingAddress },
    'ageing-stands-for': { text: 'Every ageing against the store, drawn', address: to.ageingAddress },
    'defect-signals-answered': { text: 'The charts of defects', address: to.defectChartsAddress },
    'lots-traced': { text: 'Assemblies and the lots in them', address: to.assembliesAddress },
  }

/** A way from a finding to its picture; nothing where there is none. */
export function WhereDrawn({ code, rule }: { code: string; rule: string }) {
  const drawn = DRAWN[rule]
  if (!drawn) return null
  return (
    <p>
      <a href={drawn.address(code)}>{drawn.text}</a>
    </p>
  )
}
