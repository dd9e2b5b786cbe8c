import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { Section } from '@/app/ui/section'
import type { InstallationFacts } from '@/lib/queries/administration'
import { isOwnDatabase } from '@/lib/settings/own-database'
import type { Settings } from '@/lib/settings/settings'

/** What is kept, where, and how to copy it so that it can be put back. */
export function Keeping({ facts, settings }: { facts: InstallationFacts; settings: Settings }) {
  return (
    <>
      <Section heading="What is kept">
        <Facts
          facts={[
            { label: 'Database server', value: `PostgreSQL ${facts.serverVersion}` },
            { label: 'Database', value: size(facts.databaseBytes) },
            { label: 'Files', value: `${facts.files}, ${size(facts.fileBytes)}` },
            { label: 'Migrations applied', value: `${facts.migrations}, to ${facts.newestMigration}` },
          ]}
        />
      </Section>
      <Section heading="Backup">
        {!isOwnDatabase(settings) ? (
          <ServerBackup folder={settings.dataFolder} />
        ) : (
          <OwnBackup folder={settings.dataFolder} />
        )}
        <p className="prose">
          Practise putting a copy back before you need it. Then verify every trail: a copy that was put back
          ends at the hash it had when it was made.
        </p>
        {!settings.trailHeads.file && !settings.trailHeads.webhook && (
          <Notice
            kind="warning"
            title="The newest hashes leave this installation only on paper and in exports"
          >
            Name a file on another disk in LIQUIDUS_HEAD_FILE, or a web hook in LIQUIDUS_HEAD_WEBHOOK: only a
            hash kept elsewhere shows that a trail was cut off with all that its end wrote, or rewritten.
          </Notice>
        )}
      </Section>
    </>
  )
}

const OwnBackup = ({ folder }: { folder: string }) => (
  <p className="prose">
    Stop the app, copy the folder <code>{folder}</code> whole, start it again. To restore, put the copy in its
    place.
  </p>
)

const ServerBackup = ({ folder }: { folder: string }) => (
  <ol className="finding-notes">
    <li>
      Dump the database first: <code>pg_dump --format=custom --file=liquidus.dump $DATABASE_URL</code>.
    </li>
    <li>
      Then copy the folder <code>{folder}</code>. In this order every file the dump names is in the copy.
    </li>
    <li>
      To restore, put the folder back and <code>pg_restore</code> the dump into an empty database.
    </li>
  </ol>
)

const size = (bytes: number): string =>
  bytes < 1_000_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`
