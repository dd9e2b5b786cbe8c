'use client'
import { useState } from 'react'
import { useHydrated } from '@/app/forms/hydrated'
import { singleKeysAreOn, turnSingleKeys } from './single-keys'

/** Turns keys that are pressed alone on and off, in this browser; without scripts there are none. */
export function SingleKeysSwitch() {
  const hydrated = useHydrated()
  const [turned, setTurned] = useState<boolean>()
  if (!hydrated) return null
  return (
    <label className="field-tick">
      <input
        type="checkbox"
        checked={turned ?? singleKeysAreOn()}
        onChange={({ currentTarget: { checked } }) => {
          turnSingleKeys(checked)
          setTurned(checked)
        }}
      />
      Keys pressed alone do something, in this browser
    </label>
  )
}
