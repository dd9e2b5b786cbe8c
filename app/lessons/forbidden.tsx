import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return <NotOpen>An administrator takes no part in a programme’s decisions.</NotOpen>
}
