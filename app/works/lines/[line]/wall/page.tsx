import { notFound } from 'next/navigation'
import { lineAddress, lineWallAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { Moment } from '@/app/ui/date'
import { readLineStates } from '@/lib/queries/works/line-states'
import { findCharacteristic } from '@/shared/records/characteristics'
import { ByProgramme, Due, Narrowest, Newest } from '../../../log-table'
import { RenewEvery } from '../../../renew-every'
import { visitWorks } from '../../../visit-works'
import { MarksToPlace } from '@/app/ui/marks-to-place'

interface WallPageProps {
  readonly params: Promise<{ line: string }>
}

/** The page asks for itself again. */
const RENEWED_EVERY_S = 60

export const generateMetadata = async ({ params }: WallPageProps) => ({
  title: `${addressPart((await params).line)} – Liquidus`,
})

/** A line for a screen on the wall: large, without anything to press, renewed by itself. */
export default async function WallPage({ params }: WallPageProps) {
  const code = addressPart((await params).line)
  await visitWorks(lineWallAddress(code))
  const [line] = await readLineStates(code)
  if (!line) notFound()
  const logs = line.machineStates.filter(({ closedAt }) => closedAt === null).flatMap(({ states }) => states)
  return (
    <main className="wall">
      <MarksToPlace />
      <RenewEvery seconds={RENEWED_EVERY_S} />
      <header>
        <h1>
          {line.code}: {line.name}
        </h1>
        <p>
          {line.stated.length > 0
            ? `Made here: ${line.stated.map(({ state }) => state.programme.code).join(', ')}`
            : 'No programme states this line'}{' '}
          · as of <Moment at={new Date()} /> · <a href={lineAddress(line.code)}>back</a>
        </p>
      </header>
      <ul>
        {logs.map((log) => (
          <li key={log.id}>
            <h2>
              {findCharacteristic(log.characteristic)?.label ?? log.characteristic}, {log.machine}
            </h2>
            <p className="wall-value">
              <Newest log={log} />
            </p>
            <p>
              Window: <Narrowest log={log} />
            </p>
            <p>
              <ByProgramme log={log} />
            </p>
            <p>
              Next: <Due log={log} />
              {log.openSignals > 0 && ` · ${log.openSignals} signals without a cause`}
            </p>
          </li>
        ))}
      </ul>
    </main>
  )
}
