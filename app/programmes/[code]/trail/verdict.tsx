import { Digest } from '@/app/ui/digest'
import { Notice } from '@/app/ui/notice'
import type { TrailVerdict } from '@/shared/trail/verify'

/** What a verification found. */
export function Verdict({ verdict }: { verdict: TrailVerdict }) {
  if (verdict.intact) {
    return (
      <Notice kind="success" announced title={`All ${verdict.entryCount} entries are as they were written`}>
        Every hash follows from its entry and the one before, and every signed gate agrees. Newest hash:{' '}
        {verdict.newest && <Digest value={verdict.newest.hash} full />}. Compare it with a copy kept outside
        this database: a print, an export, or the installation’s own file of newest hashes.
      </Notice>
    )
  }
  return (
    <Notice kind="refusal" announced title="The trail has been altered">
      <ul>
        {verdict.breaks.slice(0, 20).map(({ kind, seq, sentence }) => (
          <li key={`${kind} ${seq}`}>{sentence}</li>
        ))}
      </ul>
      {verdict.breaks.length > 20 && <p>And {verdict.breaks.length - 20} more.</p>}
    </Notice>
  )
}
