import type { ReactNode } from 'react'
import { WorksProvider } from '@/app/forms/works'
import { works } from '@/lib/settings/works'
import './globals.css'

export const metadata = { title: 'Liquidus' }

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en-GB">
      <body>
        <WorksProvider works={works()}>{children}</WorksProvider>
      </body>
    </html>
  )
}
