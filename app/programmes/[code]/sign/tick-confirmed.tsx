'use client'
import type { MouseEvent } from 'react'
import { Button } from '@/app/ui/button'

/** Ticks every item that is only to be confirmed. */
export function TickConfirmed({ count }: { count: number }) {
  return <Button onClick={tickAll}>Tick all {count} to be confirmed</Button>
}

function tickAll({ currentTarget }: MouseEvent<HTMLButtonElement>): void {
  const boxes = currentTarget.form?.querySelectorAll<HTMLInputElement>('input[data-confirms]') ?? []
  for (const box of boxes) box.checked = true
}
