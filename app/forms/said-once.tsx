'use client'
import { useEffect, useRef, type ReactNode } from 'react'
import { DONE_COOKIE } from '@/app/forms/done-cookie-name'
import { useCameLoaded } from '@/app/forms/hydrated'
import { bringIntoSight, isAtWork } from '@/app/ui/bring-into-sight'

/** Says what was done once, and moves the focus to where the work goes on: the part asked for, or else here. */
export function SaidOnce({ children }: { children: ReactNode }) {
  const notice = useRef<HTMLDivElement>(null)
  const loaded = useCameLoaded()
  useEffect(() => {
    document.cookie = `${DONE_COOKIE}=; max-age=0; path=/`
    if (loaded && isAtWork()) return
    if (!bringIntoSight(location.hash, { loaded })) notice.current?.focus()
  }, [loaded])
  return (
    <div ref={notice} className="done-notice print-hidden" tabIndex={-1}>
      {children}
    </div>
  )
}
