'use client'
import { useEffect, useState, type ComponentType, type MouseEvent } from 'react'
import { createPortal } from 'react-dom'
import { findAddress } from '@/app/addresses'
import { isSingleKey } from '@/app/keys/single-keys'

interface DialogProps {
  programme: string | undefined
  onClose: () => void
}

/** What a key opens; the code of a dialog is loaded when it is first asked for. */
const DIALOGS = {
  find: () => import('./find-dialog'),
  keys: () => import('@/app/keys/keys-dialog'),
}
type DialogName = keyof typeof DIALOGS

/** The way to anything: a link without scripts; with them a dialog, one key away. */
export function FindLink({ programme }: { programme: string | undefined }) {
  const [open, setOpen] = useState<{ Dialog: ComponentType<DialogProps> }>()
  const show = async (name: DialogName) => {
    const { default: Dialog } = await DIALOGS[name]()
    setOpen((shown) => shown ?? { Dialog })
  }
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      const name = dialogFor(event)
      if (!name) return
      event.preventDefault()
      void show(name)
    }
    document.addEventListener('keydown', pressed)
    return () => document.removeEventListener('keydown', pressed)
  }, [])
  const clicked = (event: MouseEvent) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return
    event.preventDefault()
    void show('find')
  }
  return (
    <>
      <a href={findAddress('', programme)} onClick={clicked} aria-keyshortcuts="/ Control+K Meta+K">
        Find
      </a>
      {open &&
        createPortal(<open.Dialog programme={programme} onClose={() => setOpen(undefined)} />, document.body)}
    </>
  )
}

function dialogFor(event: KeyboardEvent): DialogName | undefined {
  const isK = event.key.toLowerCase() === 'k' && !event.altKey && !event.shiftKey
  if (isK && event.ctrlKey !== event.metaKey) return 'find'
  if (!isSingleKey(event)) return undefined
  return event.key === '/' ? 'find' : event.key === '?' ? 'keys' : undefined
}
