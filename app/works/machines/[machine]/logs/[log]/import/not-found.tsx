import { NoSuchFile } from '@/app/imports/no-such-file'

export default function NotFound() {
  return <NoSuchFile sendFrom="log" />
}
