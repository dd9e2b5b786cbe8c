import type { ReactNode } from 'react'
import './globals.css'

export const metadata = { title: 'Liquidus' }

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en-GB">
      <body>{children}</body>
    </html>
  )
}
