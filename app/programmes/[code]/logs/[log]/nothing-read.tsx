import { machineLogAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import type { Log } from '@/shared/records/log'

/** A log of which nothing counts for the programme yet: where its readings are added, and which of them count here. */
export const NothingRead = ({ log: { atWorks }, title }: { log: Log; title: string }) => (
  <Empty title={title}>
    {atWorks && (
      <>
        They are first added <a href={machineLogAddress(atWorks.machine, atWorks.log)}>at the machine</a>; of
        those, what was read for the days on which this programme ran there counts here.
      </>
    )}
  </Empty>
)
