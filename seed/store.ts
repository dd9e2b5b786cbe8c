import { storeTextFor } from '@/seed/attach-file'
import type { LotTestStory } from '@/seed/level-transmitter/lot-story'
import { csvOf, readingsOf } from '@/seed/readings'
import type { Story } from '@/seed/story'

/** Something of a supplier's, as commands name it. */
export const atSupplier = (code: string) => ({ works: { kind: 'supplier' as const, code } })

/** Records a test of a lot with its readings, as from the file the tester wrote. */
export async function testInStore(
  story: Story,
  { supplier, lot }: { readonly supplier: string; readonly lot: string },
  test: LotTestStory & { readonly testedOn: string },
  instruments: Readonly<Record<string, string>>,
): Promise<void> {
  const sender = await story.supplierReader('sunniva', supplier)
  await story.act('sunniva', 'test-lot', {
    ...atSupplier(supplier),
    lot,
    method: test.method,
    testedOn: test.testedOn,
    testedBy: 'Sunniva Brandt',
    instrument: test.instrument && (instruments[test.instrument] ?? null),
    conditions: test.conditions,
    readings: readingsOf(test.rows),
    file: await storeTextFor(sender, `${lot}-${test.method}.csv`, csvOf(test.rows)),
  })
}
