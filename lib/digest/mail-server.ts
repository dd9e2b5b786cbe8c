import { createTransport, type Transporter } from 'nodemailer'
import type { MailSettings } from '@/lib/settings/settings'

const PATIENCE_MS = 20_000
const LOOPBACK = new Set(['localhost', '127.0.0.1', '[::1]'])

/** The mail server of the settings. A password goes over TLS only, except to this machine itself. */
export function mailServer({ server }: Pick<MailSettings, 'server'>): Transporter {
  const { protocol, hostname, port, username, password } = new URL(server)
  const secure = protocol === 'smtps:'
  return createTransport({
    host: hostname.replace(/^\[(.*)\]$/, '$1'),
    port: port ? Number(port) : secure ? 465 : 587,
    secure,
    ...(username && {
      auth: { user: decodeURIComponent(username), pass: decodeURIComponent(password) },
      requireTLS: !secure && !LOOPBACK.has(hostname),
    }),
    connectionTimeout: PATIENCE_MS,
    greetingTimeout: PATIENCE_MS,
    socketTimeout: PATIENCE_MS,
    disableFileAccess: true,
    disableUrlAccess: true,
  })
}
