import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { foldedList } from '@/shared/quantity/folded-names'

export const traceLot = defineFace({
  label: 'Record which assemblies a lot went into',
  done: 'Recorded which assemblies a lot went into',
  may: { scope: 'programme', departments: ['production', 'quality'] },
  record: z.object({ lot: z.string(), part: z.string(), assemblies: z.array(z.string()) }),
  reads: ({ lot, part, assemblies }) => ({
    subject: `lot ${lot}, ${part}`,
    what: `into ${foldedList(assemblies)}`,
  }),
  leads: ({ lot }) => ({ kind: 'lot', lot }),
})
