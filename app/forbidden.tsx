import { NotOpen } from '@/app/frame/not-open'

export default function Forbidden() {
  return <NotOpen>It is for others. An administrator, or a programme’s lead, can say whom to ask.</NotOpen>
}
