import { keptSecret } from '@/lib/settings/kept-secret'
import { settings } from '@/lib/settings/settings'

/** What refusals of uploads are sealed with, kept by the installation. */
export const uploadSecret = (): string => keptSecret(settings().dataFolder, 'upload-answer-secret')
