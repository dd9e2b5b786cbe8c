import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return <NotOpen>Only an administrator may do this; an auditor may read it.</NotOpen>
}
