import { attachText, storeText } from '@/seed/attach-file'
import { gaugeStudies } from '@/seed/level-transmitter/gauge-study'
import type { LotTestStory } from '@/seed/level-transmitter/lot-story'
import { lotsFor, SOLDERED_LOTS } from '@/seed/level-transmitter/lots'
import { serials } from '@/seed/level-transmitter/serials'
import { csvOf, readingsOf } from '@/seed/readings'
import type { Story } from '@/seed/story'

/** What is bought in is shown to meet the specification, lot by lot. */
export async function evaluate(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  const lots = lotsFor(story.code)
  story.on('2026-03-09')
  for (const { tests: _, ...lot } of lots) {
    await story.do('sunniva', 'receive-lot', {
      ...lot,
      dateCode: '2608',
      receivedOn: '2026-03-09',
      temperatureC: 22,
      relativeHumidityPct: 42,
      packing: 'sealed, with desiccant',
    })
  }
  story.on('2026-03-11')
  for (const { code, tests } of lots) for (const test of tests) await record(story, code, test, instruments)
  await story.on('2026-03-12').do('sunniva', 'add-record', { kind: 'gauge-reading', rows: gaugeStudies() })
  story.on('2026-03-16')
  for (const { code } of lots) {
    await story.do('sunniva', 'dispose-lot', {
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

/** Records a test with its readings, as from the file the tester wrote. */
async function record(
  story: Story,
  lot: string,
  test: LotTestStory,
  instruments: Readonly<Record<string, string>>,
): Promise<void> {
  await story.do('sunniva', 'test-lot', {
    lot,
    method: test.method,
    testedOn: '2026-03-11',
    testedBy: 'Sunniva Brandt',
    instrument: test.instrument && (instruments[test.instrument] ?? null),
    conditions: test.conditions,
    readings: readingsOf(test.rows),
    file: await storeText(story, 'sunniva', `${lot}-${test.method}.csv`, csvOf(test.rows)),
  })
}
