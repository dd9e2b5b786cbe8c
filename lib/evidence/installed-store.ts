import { join } from 'node:path'
import { openEvidenceStore, type EvidenceStore } from '@/lib/evidence/store'
import { settings } from '@/lib/settings/settings'

let opened: Promise<EvidenceStore> | undefined

/** The installation's store of evidence, in its data folder. */
export const installedStore = (): Promise<EvidenceStore> =>
  (opened ??= openEvidenceStore(join(settings().dataFolder, 'evidence')))
