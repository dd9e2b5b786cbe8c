import { NotOpenUnless } from '@/app/frame/not-open'

export default function Forbidden() {
  return <NotOpenUnless command="add-readings" />
}
