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
  'carry-to-works': defineEntryFace({
    label: 'Carry to the works what programmes shared',
    done: 'Carried to the works what programmes shared',
    record: z.object({
      logs: z.array(z.object({ code: z.string(), machine: z.string() })).optional(),
      people: z.array(z.object({ name: z.string() })).optional(),
    }),
    reads: ({ logs, people }) => ({
      subject: [
        ...(logs ?? []).map(({ code, machine }) => `log ${code} to machine ${machine}`),
        ...(people ?? []).map(({ name }) => name),
      ].join(', '),
    }),
    leads: ({ logs }) => ({ kind: logs ? 'programme lines' : 'works' }),
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
