import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { enduranceTables, storageTables } from './endurance-tables'
import { boardFinishTables, leadFinishTables } from './finish-tables'
import { laminateTables } from './laminate-tables'
import { conductorTables, fillTables, holeTables } from './layout-tables'
import { ReferenceTableShown, type ReferenceTable } from './reference-table'
import { solderTables } from './solder-tables'

/** The published values that an item chooses from or is judged by. */
const TABLES: Readonly<Record<string, (view: ProgrammeView) => readonly ReferenceTable[]>> = {
  laminate: laminateTables,
  'holes-and-lands': holeTables,
  'joint-geometry': fillTables,
  'conductors-and-spacings': conductorTables,
  'board-finish': boardFinishTables,
  'lead-finish': leadFinishTables,
  storage: storageTables,
  'solder-and-flux': solderTables,
  'joint-budget': enduranceTables,
}

/** Every table of the item, each row with its source; nothing where the item rests on none. */
export function TablesOfItem({ item, view }: { item: string; view: ProgrammeView }) {
  const tables = TABLES[item]?.(view) ?? []
  if (tables.length === 0) return null
  return (
    <Section heading={`Tables behind this item (${tables.length})`} fold="shut">
      {tables.map((table) => (
        <ReferenceTableShown key={table.caption} table={table} />
      ))}
    </Section>
  )
}
