import { MS_PER_HOUR } from '@/shared/quantity/calendar'
import { Moment } from '@/app/ui/date'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { VerificationFacts } from '@/lib/queries/administration'

/** When all trails were last verified, with all that they speak of, and what was found. */
export function LastVerification({ facts }: { facts: VerificationFacts }) {
  const { trails, verified, broken, stepped, oldest, newest, isLate } = facts
  return (
    <Section
      id="verification"
      heading="Verification of the trails"
      lead="At the start and every night: each chain, and everything stored against what its entries say"
    >
      <p className="prose">
        {newest && oldest ? (
          <>
            {verified} of {trails} trails verified, last <Moment at={newest} />
            {newest.getTime() - oldest.getTime() > MS_PER_HOUR && (
              <>
                , the one longest ago <Moment at={oldest} />
              </>
            )}
            .
          </>
        ) : (
          'No trail has been verified yet; it is done when the app has started.'
        )}
      </p>
      {verified > 0 && broken === 0 && <Notice kind="success" title="None of them was broken" />}
      {broken > 0 && (
        <Notice kind="refusal" title={`${broken} of ${verified} trails were broken`}>
          Which, and where, is in the server’s log. An auditor sees it under Audit, and verifies again there.
        </Notice>
      )}
      {stepped > 0 && (
        <Notice kind="warning" title={`Time runs backwards in ${stepped} of ${verified} trails`}>
          The server’s clock was set back, or entries were written with times of their own.
        </Notice>
      )}
      {isLate && (
        <Notice kind="warning" title="The nightly verification does not come through">
          Look for its error in the server’s log, or run <code>npm run verify</code> on the server.
        </Notice>
      )}
    </Section>
  )
}
