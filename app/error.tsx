'use client'
import { Nearby } from '@/app/frame/nearby'
import { Button } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock } from '@/app/ui/title-block'

/** Something broke that is not the person's doing. What was typed is gone only if they leave the page. */
export default function ErrorPage({
  error,
  reset,
}: {
  error: Error & { digest?: string }
  reset: () => void
}) {
  return (
    <Sheet
      place={[{ text: 'Something broke' }]}
      nav={<Nearby />}
      titleBlock={<TitleBlock title="Something broke" cells={[]} />}
    >
      <Notice kind="warning" announced title="The page could not be drawn">
        Nothing was stored by halves: a change is kept whole or not at all. Try again; if it stays, tell an
        administrator
        {error.digest ? ` the number ${error.digest}, under which the log has the cause.` : '.'}
      </Notice>
      <Button kind="primary" onClick={reset}>
        Try again
      </Button>
    </Sheet>
  )
}
