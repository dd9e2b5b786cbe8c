import { withConnection } from '@/lib/db/connect'
import { readerOver } from '@/lib/db/row-reader'
import { StartRefused } from '@/lib/settings/start-refused'
import { allTrails } from '@/lib/trail/all-trails'
import { verdictOnStored, type FilesSeen } from '@/lib/trail/verify-stored'
import { say } from '@/scripts/progress'
import { notDone, withInstallation } from '@/scripts/with-installation'
import { breakCountOf, breaksInWords, type StoredVerdict } from '@/shared/stored/stored-verdict'

const MAX_BREAKS_SAID = 20

/** Verifies the trails of these codes, or all of them; answers the exit code. */
export async function verifyInstallation(codes: readonly string[]): Promise<0 | 1 | 2> {
  try {
    return await withInstallation(({ url }) => verifyTrails(url, codes))
  } catch (error) {
    say(`Not checked: ${notDone(error)}`)
    return 2
  }
}

/** Says of each trail what was found. */
export async function verifyTrails(url: string, codes: readonly string[]): Promise<0 | 1 | 2> {
  const trails = await withConnection(url, (client) => allTrails(readerOver(client)))
  const unknown = codes.filter((code) => !trails.some((trail) => trail.code === code))
  if (unknown.length > 0) throw new StartRefused(`There is no programme ${unknown.join(', ')}.`)
  const seen: FilesSeen = new Map()
  let broken = 0
  for (const { id, code } of trails) {
    if (codes.length > 0 && !codes.includes(code)) continue
    const verdict = await verdictOnStored(id, seen)
    if (!verdict.intact) broken += 1
    for (const line of verdictInLines(code, verdict)) say(line)
  }
  return broken > 0 ? 1 : 0
}

function* verdictInLines(code: string, verdict: StoredVerdict): Generator<string> {
  const { intact, chain, stored } = verdict
  const of = `${chain.entryCount} entries, ${stored.rows} rows, ${stored.files} files`
  yield `${code}: ${intact ? 'WHOLE' : 'BROKEN'} (${of}), newest hash ${chain.newest?.hash ?? 'none'}`
  for (const sentence of breaksInWords(verdict, MAX_BREAKS_SAID)) yield `  - ${sentence}`
  const more = breakCountOf(verdict) - MAX_BREAKS_SAID
  if (more > 0) yield `  - and ${more} more`
  for (const { seq, at, before } of chain.clockSteps)
    yield `  time runs backwards: entry ${seq} says ${at}, the one before it ${before}`
  if (stored.unhashedRows > 0)
    yield `  ${stored.unhashedRows} rows were written before their content was hashed, so that not all of them could be compared`
}
