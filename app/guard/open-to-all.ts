import { marked } from '@/app/guard/guard-of'

/** A route handler that asks nobody who they are, and why it need not. */
export const openToAll = <Given extends unknown[]>(
  because: string,
  handle: (...given: Given) => Response | Promise<Response>,
) => marked(async (...given: Given): Promise<Response> => handle(...given), { by: 'nothing', because })
