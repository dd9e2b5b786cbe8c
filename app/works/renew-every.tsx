'use client'
import { useRouter } from 'next/navigation'
import { useEffect } from 'react'

/** Asks the server for the page again every so many seconds, without losing the place on it. */
export function RenewEvery({ seconds }: { seconds: number }) {
  const router = useRouter()
  useEffect(() => {
    const timer = setInterval(() => router.refresh(), seconds * 1000)
    return () => clearInterval(timer)
  }, [router, seconds])
  return null
}
