import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return (
    <NotOpen>
      An administrator reads no programme. The installation’s own trail is under Administration.
    </NotOpen>
  )
}
