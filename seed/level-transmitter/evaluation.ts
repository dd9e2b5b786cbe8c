import { attachText } from '@/seed/attach-file'
import { gaugeStudies } from '@/seed/level-transmitter/gauge-study'
import { lotsFor, SHARED_LOTS, SOLDERED_LOTS } from '@/seed/level-transmitter/lots'
import { serials } from '@/seed/level-transmitter/serials'
import { atSupplier, testInStore } from '@/seed/store'
import type { Story } from '@/seed/story'

/** Pieces of a shared lot that the first series leaves in the store. */
const KEPT_BACK = 20

/** What is bought in is shown to meet the specification, lot by lot. */
export async function evaluate(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  const lots = lotsFor(story.code)
  story.on('2026-03-09')
  for (const { tests: _, ...lot } of lots) {
    await story.act('sunniva', 'receive-lot', {
      ...lot,
      dateCode: '2608',
      receivedOn: '2026-03-09',
      temperatureC: 22,
      relativeHumidityPct: 42,
      packing: 'sealed, with desiccant',
    })
    const { supplier, code, quantity } = lot
    await story.act('goran', 'allocate-lot', {
      ...{ supplier, lot: code, to: story.code },
      quantity: SHARED_LOTS.includes(code) ? quantity - KEPT_BACK : quantity,
    })
  }
  story.on('2026-03-11')
  for (const { supplier, code, tests } of lots)
    for (const test of tests)
      await testInStore(story, { supplier, lot: code }, { ...test, testedOn: '2026-03-11' }, instruments)
  await story.on('2026-03-12').do('sunniva', 'add-record', { kind: 'gauge-reading', rows: gaugeStudies() })
  story.on('2026-03-16')
  for (const { supplier, code } of lots) {
    await story.act('sunniva', 'dispose-lot', {
      ...atSupplier(supplier),
      lot: code,
      verdict: 'accept',
      reason: 'Every finding on the lot meets.',
    })
  }
  for (const lot of SOLDERED_LOTS) await story.do('goran', 'trace-lot', { lot, assemblies: serials(1, 240) })
  for (const item of ['parts-evaluated', 'instruments']) {
    await attachText(
      story,
      'sunniva',
      item,
      'certificate',
      `certificates-${item}.txt`,
      `Certificates on file for ${item} of LX-41.\n`,
    )
  }
  await story.on('2026-03-18').approve('evaluation')
  await story.signGate('evaluation')
}
