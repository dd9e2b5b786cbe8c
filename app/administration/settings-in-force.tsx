import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { isOwnDatabase } from '@/lib/settings/own-database'
import type { Settings } from '@/lib/settings/settings'
import { dateText } from '@/shared/quantity/date-typed'
import { decimalText } from '@/shared/quantity/decimal-typed'

interface SettingRow {
  readonly what: string
  readonly value: string
  /** The environment variable that says otherwise. */
  readonly by: string
}

/** The settings of the running app. No secret is among them: of those, only whether there is one. */
export function SettingsInForce({ settings }: { settings: Settings }) {
  return (
    <Section
      heading="Settings in force"
      lead="They are read at the start: change the environment or the .env file, then start again."
    >
      <RuledTable
        caption="Settings in force"
        captionHidden
        rows={rowsOf(settings)}
        rowKey={({ by }) => by}
        columns={[
          { label: 'What', names: true, cell: ({ what }) => what },
          { label: 'Value', cell: ({ value }) => value },
          { label: 'Set by', cell: ({ by }) => <code>{by}</code> },
        ]}
      />
    </Section>
  )
}

function rowsOf(settings: Settings): SettingRow[] {
  const { url, host, port, dataFolder, databasePoolSize, identityProvider, trailHeads, logLevel } = settings
  return [
    { what: 'Address', value: url, by: 'LIQUIDUS_URL' },
    { what: 'Listens on', value: `${host}, port ${port}`, by: 'HOST, PORT' },
    {
      what: 'Database',
      value: isOwnDatabase(settings) ? 'its own, in the data folder' : serverIn(settings.databaseUrl ?? ''),
      by: 'DATABASE_URL',
    },
    { what: 'Connections at most', value: String(databasePoolSize), by: 'DATABASE_POOL_SIZE' },
    { what: 'Data folder', value: dataFolder, by: 'LIQUIDUS_DATA' },
    {
      what: 'Identity provider',
      value: identityProvider ? `${identityProvider.name}, ${identityProvider.issuer}` : 'none',
      by: 'OIDC_ISSUER',
    },
    { what: 'File for newest hashes', value: trailHeads.file ?? 'none', by: 'LIQUIDUS_HEAD_FILE' },
    {
      what: 'Web hook for newest hashes',
      value: trailHeads.webhook
        ? `${new URL(trailHeads.webhook.url).origin}, ${trailHeads.webhook.secret ? 'signed' : 'not signed'}`
        : 'none',
      by: 'LIQUIDUS_HEAD_WEBHOOK',
    },
    { what: 'Time zone of the works', value: settings.timeZone, by: 'LIQUIDUS_TIME_ZONE' },
    {
      what: 'Numbers and dates typed at the works',
      value: `${settings.locale ?? 'no locale stated'}: ${decimalText(1234.5, settings.notation.decimal)}, ${dateText('2026-12-31', settings.notation.dates)}`,
      by: 'LIQUIDUS_LOCALE',
    },
    { what: 'Currency of the works', value: settings.currency ?? 'none stated', by: 'LIQUIDUS_CURRENCY' },
    {
      what: 'Mail server',
      value: settings.mail ? `${new URL(settings.mail.server).host}, from ${settings.mail.from}` : 'none',
      by: 'LIQUIDUS_SMTP_URL',
    },
    { what: 'Log', value: logLevel, by: 'LOG_LEVEL' },
  ]
}

/** Host and database alone: name and password stay out. */
function serverIn(databaseUrl: string): string {
  const { host, pathname } = new URL(databaseUrl)
  return `${host}${pathname}`
}
