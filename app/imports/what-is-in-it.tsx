import { Notice } from '@/app/ui/notice'
import type { ReadingsImport } from '@/lib/readings/parse-readings'

const MAX_LISTED = 50

/** How many readings a file holds, or everything that is wrong with it by line and column. */
export function WhatIsInIt({ parsed }: { parsed: ReadingsImport }) {
  if (parsed.ok)
    return (
      <Notice kind="success" title={`${parsed.readings.count} readings can be imported`}>
        {parsed.ignoredHeadings.length > 0
          ? `Not imported: ${parsed.ignoredHeadings.join(', ')}.`
          : 'Every column is used.'}
      </Notice>
    )
  const { errors, errorCount } = parsed
  return (
    <Notice
      kind="refusal"
      announced
      title={`Nothing is imported: ${errorCount} ${errorCount === 1 ? 'thing is' : 'things are'} wrong`}
    >
      <ul>
        {errors.slice(0, MAX_LISTED).map(({ message }) => (
          <li key={message}>{message}</li>
        ))}
      </ul>
      {errorCount > MAX_LISTED && <p>And {errorCount - MAX_LISTED} more. Mend the file and send it again.</p>}
    </Notice>
  )
}
