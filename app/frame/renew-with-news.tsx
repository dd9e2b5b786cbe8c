'use client'
import { useRouter } from 'next/navigation'
import { useEffect, useState } from 'react'
import { isUnsaved } from '@/app/forms/unsaved'
import { Notice } from '@/app/ui/notice'

/** News that come close together renew the page once. */
const GATHERED_MS = 1_500

/**
 * Renews the page when what it shows has changed, while it is looked at. Where something is typed and not sent, the
 * page stays as it is and says so instead.
 */
export function RenewWithNews({ from }: { from: string }) {
  const router = useRouter()
  const [held, setHeld] = useState(false)
  useEffect(() => {
    let news: EventSource | undefined
    let soon: ReturnType<typeof setTimeout> | undefined
    const renew = () => {
      clearTimeout(soon)
      soon = setTimeout(() => {
        if (isUnsaved()) setHeld(true)
        else router.refresh()
      }, GATHERED_MS)
    }
    const listen = () => {
      news?.close()
      news = undefined
      if (document.visibilityState !== 'visible') return
      news = new EventSource(from)
      news.onmessage = renew
    }
    listen()
    document.addEventListener('visibilitychange', listen)
    return () => {
      news?.close()
      clearTimeout(soon)
      document.removeEventListener('visibilitychange', listen)
    }
  }, [from, router])
  if (!held) return null
  return (
    <Notice kind="info" announced title="Others have changed this programme">
      This page shows it as it was, so that nothing you typed is lost. Send what you typed, or load the page
      again.
    </Notice>
  )
}
