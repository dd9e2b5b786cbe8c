import { z } from 'zod'
import { defineEntryFace, type AnyEntryFace } from '@/shared/commands/face'

/** Entries that no command wrote: nobody could have been authorised for them. */
export const BESIDE_THE_DOOR: Readonly<Record<string, AnyEntryFace>> = {
  'first-administrator': defineEntryFace({
    label: 'Make the first administrator',
    done: 'Made the first administrator',
    record: z.object({ person: z.string(), personId: z.string(), email: z.string() }),
    reads: ({ person, email }) => ({ subject: person, what: email }),
    leads: ({ personId }) => ({ kind: 'person', personId }),
  }),
  'renew-first-administrator': defineEntryFace({
    label: 'Give the first administrator a new one-time password',
    done: 'Gave the first administrator a new one-time password',
    record: z.object({ person: z.string(), personId: z.string() }),
    reads: ({ person }) => ({ subject: person }),
    leads: ({ personId }) => ({ kind: 'person', personId }),
  }),
  'bind-identity': defineEntryFace({
    label: 'Bind a person to their identity at the provider',
    done: 'Bound a person to their identity at the provider',
    record: z.object({ person: z.string(), personId: z.string(), email: z.string() }),
    reads: ({ person, email }) => ({ subject: person, what: email }),
    leads: ({ personId }) => ({ kind: 'person', personId }),
  }),
  'carry-concessions': defineEntryFace({
    label: 'Note what concessions were asked for as data',
    done: 'Noted what concessions were asked for as data',
    record: z.object({ concessions: z.array(z.object({ concession: z.number() })) }),
    reads: ({ concessions }) => ({
      subject: concessions.map(({ concession }) => `concession ${concession}`).join(', '),
    }),
    leads: ({ concessions }) => ({ kind: 'concession', number: concessions[0]?.concession ?? 1 }),
  }),
}
