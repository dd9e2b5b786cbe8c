import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return (
    <NotOpen>
      An auditor reads, an administrator keeps people and instruments; neither of them opens a programme.
    </NotOpen>
  )
}
