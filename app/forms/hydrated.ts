import { useState, useSyncExternalStore } from 'react'

const never = () => () => undefined

/** Whether scripts run: false on the server and at first, so that what needs them shows only with them. */
export const useHydrated = (): boolean =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  )

/** Whether the component came with a page that was loaded, and not by the router into a page that runs. */
export function useCameLoaded(): boolean {
  const hydrated = useHydrated()
  const [loaded] = useState(!hydrated)
  return loaded
}
