import { machineLogAddress } from '@/app/addresses'
import { ButtonLink } from '@/app/ui/button'
import type { Log } from '@/shared/records/log'

/** Where the log is kept: readings are added there, and signals answered, once for every programme. */
export function AtTheMachine({ log }: { log: Log }) {
  if (!log.atWorks) return null
  const { machine, log: name } = log.atWorks
  return (
    <p className="form-actions">
      <ButtonLink href={machineLogAddress(machine, name)}>Add readings at the machine</ButtonLink>
      <span>
        Kept once for every programme; of what the machine logs, that counts here which was read for the days
        on which this programme ran there.
      </span>
    </p>
  )
}
