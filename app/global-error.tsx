'use client'
import ErrorPage from '@/app/error'
import './globals.css'

/** The same page, for what breaks before there is any frame to draw it in. */
export default function GlobalError(props: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <html lang="en-GB">
      <body>
        <title>Something broke – Liquidus</title>
        <ErrorPage {...props} />
      </body>
    </html>
  )
}
