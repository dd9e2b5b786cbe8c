'use client'
import { useEffect, useRef } from 'react'
import { glossaryAddress } from '@/app/addresses'
import { Button } from '@/app/ui/button'
import { KeyList } from './key-list'
import { OTHER_KEYS, SINGLE_KEYS } from './keys'
import { SingleKeysSwitch } from './single-keys-switch'

/** The list of keys, one key away. */
export default function KeysDialog({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} className="find-dialog" aria-labelledby="keys-heading" onClose={onClose}>
      <h2 id="keys-heading">Keys</h2>
      <KeyList keys={SINGLE_KEYS} />
      <SingleKeysSwitch />
      <KeyList keys={OTHER_KEYS} />
      <p>
        A word you do not know? Find it, or read <a href={glossaryAddress()}>the glossary</a>.
      </p>
      <p>
        <Button onClick={() => dialog.current?.close()}>Close</Button>
      </p>
    </dialog>
  )
}
