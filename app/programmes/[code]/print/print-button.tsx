'use client'
import { useHydrated } from '@/app/forms/hydrated'
import { Button } from '@/app/ui/button'

/** Opens the browser's own print dialogue; without scripts its menu does the same. */
export function PrintButton() {
  if (!useHydrated()) return <p className="print-hidden">Print this page from the browser’s menu.</p>
  return (
    <p className="print-hidden">
      <Button kind="primary" onClick={() => window.print()}>
        Print
      </Button>
    </p>
  )
}
