'use client'
import { Digest } from '@/app/ui/digest'
import { countText } from '@/shared/quantity/digits-in-threes'
import { Notice } from '@/app/ui/notice'
import { useWorks } from '@/app/forms/works'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import { breakCountOf, breaksInWords, type StoredVerdict } from '@/shared/stored/stored-verdict'
import type { ClockStep } from '@/shared/trail/trail-break'

const MAX_SHOWN = 20

/** What a verification found: of the chain, of what its entries say was stored, and of the clock. */
export function Verdict({ verdict }: { verdict: StoredVerdict }) {
  return (
    <>
      {verdict.intact ? <Whole verdict={verdict} /> : <Broken verdict={verdict} />}
      <ClockSteps steps={verdict.chain.clockSteps} />
    </>
  )
}

function Whole({ verdict: { chain, stored } }: { verdict: StoredVerdict }) {
  return (
    <Notice
      kind="success"
      announced
      title={`All ${countText(chain.entryCount)} entries are as they were written, and what they wrote stands`}
    >
      <p>
        Every hash follows from its entry and the one before, the trail ends where it says, and every signed
        gate agrees. {countText(stored.rows)} rows and {filesInWords(stored.files)} were compared with what
        the entries say of them.
        {stored.unhashedRows > 0 && <> {unhashedInWords(stored.unhashedRows)}</>}
      </p>
      <p>
        Newest hash: {chain.newest && <Digest value={chain.newest.hash} full />}. Compare it with a copy kept
        outside this database: a print, an export, or the installation’s own file of newest hashes.
      </p>
    </Notice>
  )
}

function Broken({ verdict }: { verdict: StoredVerdict }) {
  const count = breakCountOf(verdict)
  return (
    <Notice
      kind="refusal"
      announced
      title={
        verdict.chain.intact
          ? 'What the trail’s entries wrote has been altered'
          : 'The trail has been altered'
      }
    >
      <ul className="finding-notes">
        {breaksInWords(verdict, MAX_SHOWN).map((sentence, position) => (
          <li key={position}>{sentence}</li>
        ))}
      </ul>
      {count > MAX_SHOWN && <p>And {countText(count - MAX_SHOWN)} more.</p>}
      {verdict.stored.unhashedRows > 0 && <p>{unhashedInWords(verdict.stored.unhashedRows)}</p>}
    </Notice>
  )
}

/** No break: a clock that was set back does it, and the chain holds all the same. */
function ClockSteps({ steps }: { steps: readonly ClockStep[] }) {
  const { timeZone } = useWorks()
  if (steps.length === 0) return null
  return (
    <Notice kind="warning" announced title="Time runs backwards in this trail">
      <p>
        The server’s clock was set back, or entries were written with times of their own. Their order is
        certain, their times are not.
      </p>
      <ul className="finding-notes">
        {steps.slice(0, MAX_SHOWN).map(({ seq, at, before }) => (
          <li key={seq}>
            Entry {seq} says {timeInWords(at, timeZone)}, the one before it {timeInWords(before, timeZone)}.
          </li>
        ))}
      </ul>
      {steps.length > MAX_SHOWN && <p>And {countText(steps.length - MAX_SHOWN)} more.</p>}
    </Notice>
  )
}

/** To the millisecond: the clock may have gone back by less than a second. */
const timeInWords = (at: string, timeZone: string): string =>
  `${wallTimeOf(Date.parse(at), timeZone).replace('T', ' ')}${at.slice(19, 23)}`

const filesInWords = (files: number): string =>
  files === 0 ? 'no file' : files === 1 ? '1 file' : `${countText(files)} files`

const unhashedInWords = (rows: number): string =>
  rows === 1
    ? '1 row was written before its content was hashed, so that not all of it could be compared.'
    : `${countText(rows)} rows were written before their content was hashed, so that not all of them could be compared.`
