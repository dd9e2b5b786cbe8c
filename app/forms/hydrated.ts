import { useSyncExternalStore } from 'react'

const never = () => () => undefined

/** Whether scripts run: false on the server and at first, so that what needs them shows only with them. */
export const useHydrated = (): boolean =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  )
