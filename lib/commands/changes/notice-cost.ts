import { z } from 'zod'
import { numberWanted } from '@/shared/columns/number-wanted'

const money = (what: string) =>
  z
    .number({ error: numberWanted(what) })
    .min(-1e9, `${what} is too large.`)
    .max(1e9, `${what} is too large.`)
    .nullable()
    .default(null)

/** The boxes for what a change notice costs. A saving is a negative cost; what nobody knows stays empty. */
export const noticeCost = {
  costPerBoard: money('The cost per board'),
  costOnce: money('The cost once'),
}
