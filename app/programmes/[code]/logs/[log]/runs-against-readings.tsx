import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import type { RunsOfLog } from '@/shared/charts/runs-of-log'
import { formatQuantity } from '@/shared/quantity/format'

const MAX_LISTED = 60

const STANDING = { inside: 'inside', outside: 'outside, not answered', 'not shown': 'not shown' } as const

/** The soldering runs that the readings do not speak well for, beside the picture that marks them. */
export function RunsAgainstReadings({ log, of: { runs, maxHours } }: { log: string; of: RunsOfLog }) {
  if (runs.length === 0) return <p>No run of soldering by machine is recorded on this line yet.</p>
  const concerned = runs.filter(({ is }) => is !== 'inside')
  const asked = `a reading inside, no more than ${formatQuantity(maxHours, 'h')} before it`
  if (concerned.length === 0)
    return (
      <p>{`${runs.length === 1 ? 'The one soldering run' : `All ${runs.length} soldering runs`} of this line had ${asked}, by an instrument in calibration.`}</p>
    )
  return (
    <>
      <p>{`${runs.length - concerned.length} of ${runs.length} soldering runs of this line had ${asked}. The others:`}</p>
      <RuledTable
        caption={`Soldering runs that the readings of ${log} do not cover`}
        rows={concerned.slice(0, MAX_LISTED)}
        rowKey={({ run }) => run.id}
        columns={[
          { label: 'Soldered on', names: true, cell: ({ run }) => <Day at={run.doneOn} /> },
          { label: 'Line', cell: ({ run }) => run.line ?? 'not named' },
          { label: 'Assemblies', set: 'number', cell: ({ run }) => run.assemblies },
          { label: 'Stands', cell: ({ is }) => STANDING[is] },
          { label: 'Why', cell: ({ message }) => message ?? '' },
        ]}
      />
      {concerned.length > MAX_LISTED && <p>{`And ${concerned.length - MAX_LISTED} more.`}</p>}
    </>
  )
}
