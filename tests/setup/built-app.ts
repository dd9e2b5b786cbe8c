import { buildWhenChanged } from '@/scripts/build-when-changed'

/** Once for a run: the app is built, so that those who start it side by side find it so. */
export default (): Promise<void> => buildWhenChanged(new AbortController().signal)
