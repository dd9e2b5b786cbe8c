'use client'
import { useRouter } from 'next/navigation'
import { useEffect, useState } from 'react'
import { healthAddress } from '@/app/addresses'
import { isUnderWay, isUnsaved } from '@/app/forms/unsaved'
import { Notice } from '@/app/ui/notice'

/** News that come within this time renew the page once. */
const GATHERED_MS = 1_500

interface RenewWithNewsProps {
  /** Where it hears of them. */
  from: string
  /** For a page that much happens on: as long as that, ms. */
  gatheredMs?: number
}

/**
 * Renews the page when what it shows has changed, while it is looked at. Where something is typed and not sent, the
 * page stays as it is and says so instead.
 */
export function RenewWithNews({ from, gatheredMs = GATHERED_MS }: RenewWithNewsProps) {
  const router = useRouter()
  const [held, setHeld] = useState(false)
  useEffect(() => {
    let news: EventSource | undefined
    let soon: ReturnType<typeof setTimeout> | undefined
    let isOver = false
    const renew = () => {
      // From the first of them on: a machine that pushes every second would put it off for ever.
      soon ??= setTimeout(() => void renewNow(), gatheredMs)
    }
    const renewNow = async () => {
      // What the router cannot fetch it leaves the page for, with all that was typed meanwhile.
      const reached = isUnderWay() || isUnsaved() || (await isReached())
      soon = undefined
      if (isOver) return
      if (!reached || isUnderWay()) renew()
      else if (isUnsaved()) setHeld(true)
      else router.refresh()
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
      isOver = true
      news?.close()
      clearTimeout(soon)
      document.removeEventListener('visibilitychange', listen)
    }
  }, [from, gatheredMs, router])
  if (!held) return null
  return (
    <Notice kind="info" announced title="Something here has changed meanwhile">
      This page shows it as it was, so that nothing you typed is lost. Send what you typed, or load the page
      again.
    </Notice>
  )
}

/** Whether the installation answers at all, whatever it says. */
const isReached = (): Promise<boolean> =>
  fetch(healthAddress(), { cache: 'no-store' }).then(
    () => true,
    () => false,
  )
