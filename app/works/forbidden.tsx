import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return <NotOpen>An administrator keeps people and instruments, and reads nothing of the works.</NotOpen>
}
