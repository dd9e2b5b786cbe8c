import { NotOpen } from '@/app/frame/not-open'
import { NOT_A_MEMBER } from '@/shared/policy'

export default function Forbidden() {
  return <NotOpen>{NOT_A_MEMBER}</NotOpen>
}
