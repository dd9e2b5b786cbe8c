import type { ReactNode } from 'react'
import { Notice } from '@/app/ui/notice'

/** Why there is no form here for this person. */
export const MayNot = ({ children }: { children: ReactNode }) => (
  <Notice kind="info" title="You read here">
    {children}
  </Notice>
)
