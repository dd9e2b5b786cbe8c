'use client'
import { useEffect } from 'react'
import { useCameLoaded } from '@/app/forms/hydrated'
import { isSingleKey } from '@/app/keys/single-keys'
import { bringIntoSight, isAtWork } from '@/app/ui/bring-into-sight'

interface ItemKeysProps {
  previous: string | undefined
  next: string | undefined
}

/** J and K go to the next and the previous item, S to the signing box; and what an address names unfolds. */
export function ItemKeys({ previous, next }: ItemKeysProps) {
  const loaded = useCameLoaded()
  useEffect(() => {
    if (!(loaded && isAtWork())) bringIntoSight(location.hash, { loaded })
  }, [loaded])
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (!isSingleKey(event)) return
      const key = event.key.toLowerCase()
      const goTo = { j: next, k: previous }[key]
      if (goTo) location.assign(goTo)
      if (key !== 's') return
      // Or else the letter would be typed into the box.
      event.preventDefault()
      toSigning()
    }
    const unfold = () => void bringIntoSight(location.hash)
    document.addEventListener('keydown', pressed)
    window.addEventListener('hashchange', unfold)
    return () => {
      document.removeEventListener('keydown', pressed)
      window.removeEventListener('hashchange', unfold)
    }
  }, [previous, next])
  return null
}

/** The box for the signature, or the stamps where there is nothing to sign. */
function toSigning() {
  const box = document.querySelector<HTMLElement>('#approvals form input:not([type="hidden"])')
  bringIntoSight('#approvals')
  box?.focus()
}
