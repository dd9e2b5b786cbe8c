import { justDone } from '@/app/forms/done-cookie'
import { SaidOnce } from '@/app/forms/said-once'
import { Notice } from '@/app/ui/notice'

/** At the head of the page that an act led to: what was done, and which entry of the trail says so. */
export async function DoneNotice() {
  const just = await justDone()
  if (!just) return null
  return (
    <SaidOnce key={just.seq}>
      <Notice kind="success" announced>
        {just.done}. It is entry {just.seq} of the trail.
      </Notice>
    </SaidOnce>
  )
}
